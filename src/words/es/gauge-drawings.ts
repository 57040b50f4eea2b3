/** What is said of instruments that are drawn: their scales, and where they stand on them. */
export const GAUGE_DRAWINGS = {
  'drawing.window': 'Límites',
  'drawing.dial.caption-start': 'Antes',
  'drawing.dial.caption-now': 'Después',
  'drawing.dial.scale':
    'Carátula: {division} {unit} por división, {divisions} divisiones por vuelta, numerada hacia la derecha desde 0 cada {apart}. Contador: numerado de 0 a 9, un número por vuelta.',
  'drawing.dial.start':
    'Aguja chica del contador: {on, select, yes {en {turns}} other {entre {turns} y {next}}}. Aguja grande: {past, plural, =0 {en {number}} one {una división después de {number}} other {# divisiones después de {number}}}.',
  'drawing.dial.now':
    'Aguja chica del contador: {on, select, yes {en {turns}} other {entre {turns} y {next}}}. Aguja grande: {past, plural, =0 {en {number}} one {una división después de {number}} other {# divisiones después de {number}}}.',
  'drawing.micrometer.scale-mm':
    'Cilindro: una línea por milímetro sobre la línea de referencia, numeradas cada 5; debajo, las de medio milímetro. Tambor: {divisions} divisiones de {division} mm.',
  'drawing.micrometer.scale-in':
    'Cilindro: una línea cada 0.025 in, numerada una de cada cuatro 1, 2, 3… para las décimas. Tambor: {divisions} divisiones de {division} in.',
  'drawing.micrometer.sleeve-mm':
    'A la vista en el cilindro: número {number}{whole, plural, =0 {} one {, después una línea de milímetro} other {, después # líneas de milímetro}}{half, select, yes {, y la línea de medio milímetro tras la última} other {, sin línea de medio milímetro tras la última}}.',
  'drawing.micrometer.sleeve-in':
    'A la vista en el cilindro: número {number}{lines, plural, =0 {, ninguna línea después} one {, una línea después} other {, # líneas después}}.',
  'drawing.micrometer.thimble':
    'En la línea de referencia el tambor está {past, plural, =0 {en {number}} one {una división después de {number}} other {# divisiones después de {number}}}.',
  'drawing.depth.caption-zero': 'Cero del vernier',
  'drawing.depth.caption-lens': 'El vernier con lupa',
  'drawing.depth.bar': 'barra',
  'drawing.depth.stands':
    '{bar, select, yes {El calibrador de profundidad se apoya en una barra puesta sobre la cara; su varilla baja hasta el asiento.} other {El calibrador de profundidad se apoya en la cara; su varilla baja hasta el asiento.}}',
  'drawing.depth.scale-mm':
    'Escala principal: una línea cada {step} mm, numerada cada 10 mm. Vernier: {lines} divisiones de {division} mm, numeradas en décimas.',
  'drawing.depth.scale-in':
    'Escala principal: una línea cada {step, number, ::.000} in, numerada una de cada cuatro 1, 2, 3… para las décimas. Vernier: {lines} divisiones de {division} in, numeradas cada 5.',
  'drawing.depth.zero':
    'El cero del vernier está {on, select, yes {en} other {después de}} la línea principal {lines, plural, =0 {con el número {number}} one {que sigue al número {number}} other {# después del número {number}}}.',
  'drawing.depth.vernier':
    'La línea del vernier que coincide con una línea principal es {past, plural, =0 {la del número {number}} one {la que sigue al número {number}} other {la # después del número {number}}}.',
  'drawing.window.band': 'Límites: {low} a {high} {unit}.',
  'drawing.window.aim': 'Se busca: {aim} {unit}.',
  'drawing.window.part': '{label}: {at} {unit}{lit, select, yes {, marcado} other {}}.',
} as const;
