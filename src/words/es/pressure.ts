/** Questions on pressure, force and the torque that packs hold. */
export const PRESSURE = {
  'pressure.area':
    '{inner, select, none {π ÷ 4 × {outer}²} other {π ÷ 4 × ({outer}² − {inner}²)}} = {area} {unit}² de pistón.',
  'pressure.units-mm': 'kPa sobre mm² son milésimas de newton; N por mm son milésimas de N·m.',
  'pressure.units-in': 'psi sobre in² son lbf; lbf por in son lbf·in, doce por cada lbf·ft.',

  'family.piston-force': 'Fuerza de un pistón',
  'piston-force.prompt':
    '{element}: pistón de aplicación de {outer} de diámetro{inner, select, none {} other {, su hueco de {inner}}}, resorte de retorno {spring}. El manómetro muestra {gauge} {gaugeUnit}. ¿Con qué fuerza aprieta el pistón los discos, en {unit}? No se cuenta el aceite que gira con él. Vale ± {tolerance}.',
  'piston-force.reason':
    'Presión por eso son {open} {unit}; menos el resorte, {spring}, quedan {force} {unit}.',

  'family.clutch-torque': 'Torque que sujeta un paquete',
  'clutch-torque.prompt':
    '{element}: pistón de aplicación de {outer} de diámetro{inner, select, none {} other {, su hueco de {inner}}}, resorte de retorno {spring}; {frictions} discos de fricción, forro de diámetro exterior {liningOuter} e interior {liningInner}, coeficiente {friction}. El manómetro muestra {gauge} {gaugeUnit}. ¿Cuánto torque sujeta, en {unit}? Toma la fricción a la mitad del forro, sin contar el aceite que gira. Vale ± {tolerance}.',
  'clutch-torque.row':
    '{faces} caras × {friction} × {force} {forceUnit} × {radius} {length} = {torque} {unit}.',
  'clutch-torque.reason':
    '{frictions} discos de fricción tienen {faces} caras en total, y cada cara sujeta igual.',
  'clutch-torque.force': 'Presión por eso, menos el resorte {spring}: {force} {unit} sobre los discos.',
  'clutch-torque.radius': 'Mitad del forro: ({outer} + {inner}) ÷ 4 = {radius} {unit} desde el centro.',

  'family.pressure-needed': 'Presión que necesita un elemento',
  'pressure-needed.prompt':
    'En la marcha {range}, {element} lleva {torque} {torqueUnit}. Pistón de aplicación de {outer} de diámetro{inner, select, none {} other {, su hueco de {inner}}}, resorte de retorno {spring}; {frictions} discos de fricción, forro de diámetro exterior {liningOuter} e interior {liningInner}, coeficiente {friction}. ¿Qué presión necesita para no patinar, en {unit}? Toma la fricción a la mitad del forro, sin contar el aceite que gira. Vale ± {tolerance}.',
  'pressure-needed.row':
    '{torque} {torqueUnit} entre {faces} caras, {friction} y la mitad del forro piden {force} {forceUnit}.',
  'pressure-needed.reason':
    '{force} para los discos y {spring} para el resorte son {sum} {forceUnit}; entre el área son {pressure} {unit}.',
  'pressure-needed.input': 'Lleva eso con {input} {unit} en la entrada: {torque} {unit}, según los dientes.',

  'family.tap-pressures': 'Lo que muestran los manómetros',
  'tap-pressures.prompt':
    'Se pide la marcha {range}{lever, select, yes { con la palanca en {position}} other {}}, y el enchufe de {solenoid} está quitado. ¿Qué muestra un manómetro en la toma de cada elemento?',
  'tap-pressures.gauge': 'Manómetro',
  'tap-pressures.shows-full': 'presión de línea',
  'tap-pressures.shows-none': 'nada',
  'tap-pressures.reason': '{solenoid} alimenta a {elements}; todo lo demás queda como dice la fila.',
  'tap-pressures.line-charted':
    '{element}: {pressure, select, full {actúa en la marcha {range}, así que presión de línea} other {no actúa en la marcha {range}, así que nada}}.',
  'tap-pressures.line-dead':
    '{element}: lo alimenta {solenoid}, que sin corriente da {pressure, select, full {presión de línea} other {nada}}.',
  'tap-pressures.line-valve':
    '{element}: {pressure, select, full {lo alimenta la válvula manual misma en {position}} other {lo corta la válvula manual en {position}}}.',
} as const;
