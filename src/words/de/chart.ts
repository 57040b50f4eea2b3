/** Questions on reading the apply chart and on shifts, in German. */
export const CHART = {
  'shaft.case': 'Gehäuse',
  'chart.row': 'Gang {range}: {elements}.',
  'chart.drives-at': 'Damit geschlossen, treibt Gang {range} mit {ratio} : 1.',
  'chart.brake-holds': '{element} hält fest: {first}.',
  'chart.clutch-joins': '{element} lässt zwei Wellen wie eins drehen: {first}; {second}.',
  'chart.one-way-joins':
    '{element} ist ein Freilauf. Er sperrt, sobald {first} gegenüber {second} {blocked, select, forward {vorwärts} other {rückwärts}} drehen will.',

  'family.range-elements': 'Schaltelemente eines Gangs',
  'range-elements.prompt': 'Welche Schaltelemente sind in Gang {range} geschlossen?',

  'family.range-from-elements': 'Gang aus seinen Schaltelementen',
  'range-from-elements.prompt': 'Geschlossen sind nur: {elements}. Welcher Gang ist das?',
  'range-from-elements.reason': 'Kein anderer Gang hat genau diese geschlossen.',

  'family.element-ranges': 'Gänge eines Schaltelements',
  'element-ranges.prompt': 'In welchen Gängen ist {element} geschlossen?',
  'element-ranges.row':
    '{element} ist geschlossen in {count, plural, one {Gang} other {den Gängen}} {ranges}.',

  'change.comes-on': 'schließt',
  'change.goes-off': 'öffnet',
  'change.stays-on': 'bleibt geschlossen',
  'change.stays-off': 'bleibt offen',
  'shift.named': '{from} nach {to}',
  'shift.off': '{count, plural, =0 {nichts öffnet} one {{elements} öffnet} other {{elements} öffnen}}',
  'shift.on': '{count, plural, =0 {nichts schließt} one {{elements} schließt} other {{elements} schließen}}',
  'shift.changes': '{count}',

  'family.shift-changes': 'Was sich beim Schalten ändert',
  'shift-changes.prompt': 'Schaltung von Gang {from} nach Gang {to}: was macht jedes Schaltelement?',
  'shift-changes.row': 'Bei dieser Schaltung: {off}, {on}.',
  'shift-changes.held':
    '{count, plural, one {Bleibt} other {Bleiben}} während der Schaltung geschlossen: {elements}.',
  'shift-changes.none-held': 'Nichts bleibt während der Schaltung geschlossen.',
  'shift-changes.idle': 'Vorher und nachher offen: {elements}.',
  'shift-changes.ratios':
    '{before, select, higher {Von Gang {from} nach Gang {to} wird die Übersetzung kleiner: bei gleichem Antrieb dreht der Abtrieb schneller.} other {Von Gang {from} nach Gang {to} wird die Übersetzung größer: bei gleichem Antrieb dreht der Abtrieb langsamer.}}',

  'family.shift-count': 'Wie viel eine Schaltung ändert',
  'shift-count.prompt':
    'Wie viele Schaltelemente ändern sich bei jeder Schaltung? Zähle die, die öffnen, und die, die schließen.',
  'shift-count.prompt-with-one-ways':
    'Wie viele Schaltelemente ändern sich bei jeder Schaltung? Zähle die, die öffnen, und die, die schließen, auch Freiläufe, die zu sperren beginnen oder aufhören.',
  'shift-count.row': 'In der gefragten Reihenfolge: {counts} Schaltelemente.',
  'shift-count.reason':
    'Was in beiden Gängen geschlossen ist, zählt nicht, und was ein Gang dazwischen nutzt, auch nicht.',
  'shift-count.detail': 'Von Gang {from} nach Gang {to}: {off}, {on}.',
} as const;
