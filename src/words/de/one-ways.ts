/** Questions on one-ways, in German: when they hold, when they overrun, what brakes the engine. */
export const ONE_WAYS = {
  'family.manual-range': 'Gleiche Übersetzung, von Hand gehalten',
  'manual-range.prompt':
    'Die Gänge {free} und {firm} haben die gleiche Übersetzung; die Zeile von {free} ist gegeben. Was ist in {firm} geschlossen, und welcher der beiden bremst mit dem Motor, wenn du vom Gas gehst?',
  'manual-range.element': '{element} geschlossen',
  'manual-range.braking': 'bremst mit dem Motor',
  'manual-range.yes': 'ja',
  'manual-range.no': 'nein',
  'manual-range.row':
    'Gang {firm} hat zusätzlich geschlossen: {extraCount, plural, =0 {nichts} other {{extra}}}{sparedCount, plural, =0 {} other {; ohne {spared}}} (verglichen mit Gang {free}).',
  'manual-range.reason':
    'In Gang {free} stützt sich die Last ab auf {oneWays}. Ein Freilauf lässt los, wenn der Abtrieb zurückschiebt; Gang {free} rollt also frei, und Gang {firm}, von Reibelementen gehalten, bremst mit dem Motor.',

  'family.one-way-acts': 'Wann ein Freilauf sperrt',
  'one-way-acts.prompt':
    'Was macht {oneWay} in jedem Gang: wenn der Motor zieht, und wenn du vom Gas gehst und der Abtrieb schiebt?',
  'one-way-acts.drive': 'Motor zieht',
  'one-way-acts.coast': 'Abtrieb schiebt',
  'one-way-acts.holds': 'sperrt',
  'one-way-acts.overruns': 'überholt',
  'one-way-acts.reason':
    'Er sperrt nur, wo die Last ihn in seine Sperrrichtung drehen würde: hier bei ziehendem Motor in {ranges}. Im Schub drückt die Last andersherum, und er lässt los.',
  'one-way-acts.line-holds':
    'Gang {range}: der Motor drückt in die Sperrrichtung von {oneWay}; im Schub lässt er los.',
  'one-way-acts.line-overruns':
    'Gang {range}: seine Wellen laufen auseinander, {oneWay} überholt also immer.',
} as const;
