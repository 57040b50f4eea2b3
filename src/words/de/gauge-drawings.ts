/** What is said of instruments that are drawn, in German: their scales, and where they stand on them. */
export const GAUGE_DRAWINGS = {
  'drawing.window': 'Grenzen',
  'drawing.dial.caption-start': 'Vorher',
  'drawing.dial.caption-now': 'Nachher',
  'drawing.dial.scale':
    'Zifferblatt: {division} {unit} je Teilstrich, {divisions} Teilstriche je Umdrehung, im Uhrzeigersinn ab 0 beziffert alle {apart}. Umdrehungszähler: beziffert von 0 bis 9, eine Ziffer je Umdrehung.',
  'drawing.dial.start':
    'Kleiner Zeiger: {on, select, yes {auf {turns}} other {zwischen {turns} und {next}}}. Großer Zeiger: {past, plural, =0 {auf {number}} one {einen Teilstrich nach {number}} other {# Teilstriche nach {number}}}.',
  'drawing.dial.now':
    'Kleiner Zeiger: {on, select, yes {auf {turns}} other {zwischen {turns} und {next}}}. Großer Zeiger: {past, plural, =0 {auf {number}} one {einen Teilstrich nach {number}} other {# Teilstriche nach {number}}}.',
  'drawing.micrometer.scale-mm':
    'Skalenhülse: über der Bezugslinie ein Strich je Millimeter, alle 5 beziffert; darunter die Striche der halben Millimeter. Messtrommel: {divisions} Teilstriche zu {division} mm.',
  'drawing.micrometer.scale-in':
    'Skalenhülse: ein Strich je 0,025 in, jeder vierte beziffert 1, 2, 3 … für Zehntel. Messtrommel: {divisions} Teilstriche zu {division} in.',
  'drawing.micrometer.sleeve-mm':
    'Auf der Skalenhülse frei: Ziffer {number}{whole, plural, =0 {} one {, danach ein Strich für ganze Millimeter} other {, danach # Striche für ganze Millimeter}}{half, select, yes {, und nach dem letzten davon der Strich des halben Millimeters} other {, nach dem letzten davon kein Strich des halben Millimeters}}.',
  'drawing.micrometer.sleeve-in':
    'Auf der Skalenhülse frei: Ziffer {number}{lines, plural, =0 {, danach kein Strich} one {, danach ein Strich} other {, danach # Striche}}.',
  'drawing.micrometer.thimble':
    'An der Bezugslinie steht die Messtrommel {past, plural, =0 {auf {number}} one {einen Teilstrich nach {number}} other {# Teilstriche nach {number}}}.',
  'drawing.depth.caption-zero': 'Null des Nonius',
  'drawing.depth.caption-lens': 'Nonius unter der Lupe',
  'drawing.depth.bar': 'Brücke',
  'drawing.depth.stands':
    '{bar, select, yes {Der Tiefenmessschieber steht auf einer Messbrücke, die über der Fläche liegt; seine Schiene reicht hinab bis zum Sitz.} other {Der Tiefenmessschieber steht auf der Fläche; seine Schiene reicht hinab bis zum Sitz.}}',
  'drawing.depth.scale-mm':
    'Hauptskala: ein Strich alle {step} mm, beziffert alle 10 mm. Nonius: {lines} Teilstriche zu {division} mm, in Zehnteln beziffert.',
  'drawing.depth.scale-in':
    'Hauptskala: ein Strich alle {step, number, ::.000} in, jeder vierte beziffert 1, 2, 3 … für Zehntel. Nonius: {lines} Teilstriche zu {division} in, alle 5 beziffert.',
  'drawing.depth.zero':
    'Die Null des Nonius steht {on, select, yes {auf} other {hinter}} dem Strich der Hauptskala {lines, plural, =0 {mit der Ziffer {number}} one {einen nach der Ziffer {number}} other {# nach der Ziffer {number}}}.',
  'drawing.depth.vernier':
    'Der Noniusstrich, der auf einen Strich der Hauptskala trifft, ist {past, plural, =0 {der mit der Ziffer {number}} one {einer nach der Ziffer {number}} other {# nach der Ziffer {number}}}.',
  'drawing.window.band': 'Grenzen: {low} bis {high} {unit}.',
  'drawing.window.aim': 'Zielwert: {aim} {unit}.',
  'drawing.window.part': '{label}: {at} {unit}{lit, select, yes {, markiert} other {}}.',
} as const;
