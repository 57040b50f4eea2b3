/** Questions that work with the chart, in German: what goes together, what to look at, what was copied wrong. */
export const CHART_WORK = {
  'family.element-company': 'Was neben einem Schaltelement geschlossen ist',
  'element-company.prompt':
    'Nimm alle Gänge, in denen {element} geschlossen ist, auch den Rückwärtsgang. In wie vielen davon ist jedes von diesen ebenfalls geschlossen?',
  'element-company.all': 'in allen davon',
  'element-company.some': 'in einigen davon',
  'element-company.none': 'in keinem davon',
  'element-company.row': '{element} ist geschlossen in: {ranges}.',
  'element-company.reason':
    'Immer mit geschlossen: {alwaysCount, plural, =0 {nichts} other {{always}}}. Nie mit geschlossen: {neverCount, plural, =0 {nichts} other {{never}}}.',
  'element-company.line':
    '{other}: {count, plural, =0 {in keinem davon} other {ebenfalls geschlossen in {ranges}}}.',

  'family.look-first': 'Wo zuerst nachsehen',
  'look-first.prompt':
    'Das Getriebe hat Kraftschluss, und du willst den Gang erkennen, indem du ein Schaltelement nach dem anderen prüfst. {count, plural, =0 {Noch ist nichts bekannt.} other {Bisher bekannt: {known}.}} Welches Schaltelement prüfst du am besten als nächstes, damit auch im ungünstigen Fall die wenigsten Gänge bleiben? Kreuze alle an, die gleich gut sind.',
  'look-first.on': '{element} ist geschlossen',
  'look-first.off': '{element} ist offen',
  'look-first.row': 'Noch möglich: {ranges}.',
  'look-first.reason':
    '{element} ist in {on} davon geschlossen und in {off} offen. Was du auch siehst, es bleiben höchstens {worst}.',
  'look-first.line': '{element}: geschlossen in {on}, offen in {off}, im ungünstigen Fall bleiben {worst}.',

  'family.copied-rows': 'Falsche Felder in einer abgeschriebenen Matrix',
  'copied-rows.prompt':
    'Diese Zeilen wurden aus der Schaltmatrix abgeschrieben, die Übersetzungen richtig. In einigen ist ein Feld falsch abgeschrieben: ein Schaltelement zu viel oder zu wenig. Welches?',
  'copied-rows.row': '{range}, bei {ratio} : 1: {elements}',
  'copied-rows.as-copied': 'so richtig',
  'copied-rows.cell': 'Feld von {element}',
  'copied-rows.too-many': 'Gang {range}, {ratio} : 1: {element} muss offen sein.',
  'copied-rows.too-few': 'Gang {range}, {ratio} : 1: {element} muss geschlossen sein.',
  'copied-rows.reason':
    'Mit diesem einen Feld berichtigt, treibt die Zeile mit ihrer Übersetzung; ändert man ein anderes, tut sie es nicht.',
} as const;
