/** Questions on oil, in German: currents through a shift, bench readings, the manual valve, interlocks. */
export const OIL = {
  'family.solenoid-changes': 'Magnetventile beim Schalten',
  'solenoid-changes.prompt':
    'Gang {from} nach Gang {to}; beide Zeilen sind gezeigt. Was macht der Strom jedes Magnetventils?',
  'solenoid-changes.prompt-lever':
    'Wählhebel in {position}, Gang {from} nach Gang {to}; beide Zeilen sind gezeigt. Was macht der Strom jedes Magnetventils?',
  'solenoid-changes.switched-on': 'wird eingeschaltet',
  'solenoid-changes.switched-off': 'wird ausgeschaltet',
  'solenoid-changes.stays-on': 'bleibt eingeschaltet',
  'solenoid-changes.stays-off': 'bleibt ausgeschaltet',
  'solenoid-changes.rows': '{from} {to}',
  'solenoid-changes.line':
    '{solenoid}: der Druck an {elements} {change, select, gains {kommt} loses {geht} kept {bleibt} other {bleibt weg}}; der Strom {sense}.',

  'family.polarity-evidence': 'Was Messungen an der Werkbank über ein Magnetventil sagen',
  'polarity-evidence.prompt':
    'Vier Magnetventile ohne Schild wurden auf der Werkbank geprüft, mit vollem Versorgungsdruck dahinter. Was gibt jedes ohne Strom?',
  'polarity-evidence.piece': '{letter}: {readings}',
  'polarity-evidence.reading': '{pressure} bar bei {current} A',
  'polarity-evidence.full': 'vollen Druck: Strom nimmt ihn weg',
  'polarity-evidence.none': 'keinen Druck: Strom bringt ihn',
  'polarity-evidence.dead': 'es folgt dem Strom nicht, ist also nicht in Ordnung',
  'polarity-evidence.open': 'die Messungen sagen es nicht: ein anderer Strom ist nötig',
  'polarity-evidence.line-full':
    '{letter}, nach Strom geordnet: {readings}. Der Druck fällt, ohne Strom ist er also voll.',
  'polarity-evidence.line-none':
    '{letter}, nach Strom geordnet: {readings}. Der Druck steigt, ohne Strom ist also keiner da.',
  'polarity-evidence.line-dead':
    '{letter}, nach Strom geordnet: {readings}. Beide Male gleich, es folgt also nicht.',
  'polarity-evidence.line-open':
    '{letter}: {readings}. Eine Messung in der Mitte sagt nichts über die Richtung.',
  'polarity-evidence.reason':
    'Ordne die Messungen erst nach dem Strom. Es zählt, wohin der Druck geht, nicht wie hoch eine Messung ist.',

  'family.valve-cuts': 'Was der Wählschieber durchlässt',
  'valve-cuts.prompt': 'Wählhebel in {position}. Wer entscheidet, ob jedes von diesen Druck hat?',
  'valve-cuts.solenoid': 'sein Magnetventil: die Versorgung ist frei',
  'valve-cuts.by-hand': 'der Wählschieber: er versorgt es, was die Magnetventile auch tun',
  'valve-cuts.cut': 'niemand: seine Versorgung ist gesperrt',
  'valve-cuts.row': 'In {position} gesperrt: {count, plural, =0 {nichts} other {{elements}}}.',
  'valve-cuts.reason':
    'Ein Magnetventil kann nur weitergeben, was ihm der Wählschieber gibt. Wo die Versorgung gesperrt ist, bringt kein Strom Druck.',
  'valve-cuts.line-solenoid': 'Frei für ihre Magnetventile: {count, plural, =0 {nichts} other {{elements}}}.',
  'valve-cuts.line-by-hand':
    'Vom Wählschieber selbst versorgt: {count, plural, =0 {nichts} other {{elements}}}.',

  'family.interlock': 'Was eine Verriegelung fernhält',
  'interlock.prompt':
    'Jede dieser Gruppen wird zusammen angefordert. Welche lässt Verriegelung {interlock} nicht so schließen, wie angefordert?',
  'interlock.prompt-lever':
    'Wählhebel in {position}, und jede dieser Gruppen wird zusammen angefordert. Welche lässt Verriegelung {interlock} nicht so schließen, wie angefordert?',
  'interlock.row':
    '{interlock} wirkt, solange {count, plural, one {{whenApplied} Druck hat} other {{whenApplied} Druck haben}}, und hält den Druck fern von: {blocks}.',
  'interlock.reason':
    'Sie braucht alles, worauf sie wartet, und etwas, das sie fernhalten kann. Ob sich der Rest verspannt, spielt keine Rolle.',
  'interlock.line':
    '{elements}: {off} {count, plural, one {bekommt} other {bekommen}} keinen Druck. Was bleibt: {does}',
} as const;
