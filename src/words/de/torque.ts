/** Questions on torque and on gearsets, in German: what one does, what carries the load, what is lost without it. */
export const TORQUE = {
  'member.sun': 'Sonnenrad',
  'member.ring': 'Hohlrad',
  'member.carrier': 'Steg',

  'family.one-set': 'Ein Planetensatz für sich',
  'one-set.prompt-simple':
    'Nimm {gearset} für sich: Sonnenrad {sunTeeth} Zähne, Hohlrad {ringTeeth}, einfache Planeten. Wie dreht der Abtrieb gegenüber dem antreibenden Glied?',
  'one-set.prompt-double-pinion':
    'Nimm {gearset} für sich: Sonnenrad {sunTeeth} Zähne, Hohlrad {ringTeeth}, Planeten in Paaren. Wie dreht der Abtrieb gegenüber dem antreibenden Glied?',
  'one-set.held': 'Antrieb {driven}, Abtrieb {out}, fest {third}',
  'one-set.joined': '{driven} und {third} verbunden und angetrieben, Abtrieb {out}',
  'one-set.slower': 'gleiche Richtung, langsamer',
  'one-set.alike': 'gleiche Richtung, gleich schnell',
  'one-set.faster': 'gleiche Richtung, schneller',
  'one-set.backward-slower': 'andere Richtung, langsamer',
  'one-set.backward-faster': 'andere Richtung, schneller',
  'one-set.line':
    '{way}: eine Umdrehung hinein gibt {turns} heraus, {sense, select, backward {in die andere Richtung} other {in die gleiche Richtung}}.',
  'one-set.reason-simple':
    'Bei einfachen Planeten ist der Steg der langsame: er ist langsamer als das, was ihn antreibt, und macht schneller, was er antreibt. Bei festem Steg drehen Sonnenrad und Hohlrad gegeneinander.',
  'one-set.reason-double-pinion':
    'Bei Planeten in Paaren drehen Sonnenrad und Hohlrad bei festem Steg in die gleiche Richtung, und das Hohlrad hat die Rolle, die bei einfachen Planeten der Steg hat.',

  'torque.carried': '{element} in Gang {range}{count, plural, =0 { (allein)} other { (mit {others})}}',
  'torque.set':
    '{gearset} teilt das Drehmoment nach den Zähnen, Sonnenrad {sunPart}, Hohlrad {ringPart}, Steg {carrierPart}: {sun}, {ring} und {carrier} N·m.',
  'torque.shaft': '{shaft}: im Gleichgewicht gehalten von {element} mit {torque} N·m.',
  'torque.case':
    'Zur Probe: {input} N·m gehen hinein und {output} kommen heraus, das Gehäuse gibt also insgesamt {reaction} N·m, über Bremsen, Freiläufe und am Gehäuse feste Räder.',

  'family.element-torque': 'Drehmoment an einem Schaltelement',
  'element-torque.prompt':
    'In Gang {range} sind geschlossen: {elements}. Am Antrieb gehen {input} N·m hinein. Wie viel Drehmoment trägt {element}? Ganze N·m, ohne Verluste; bis {tolerance} Abweichung gilt als richtig.',
  'element-torque.reason': '{element} trägt {torque} N·m, das {times}-Fache von dem, was hineingeht.',

  'family.torque-order': 'Drehmomente in Reihenfolge',
  'torque-order.prompt':
    'Am Antrieb geht jedes Mal das gleiche Drehmoment hinein. Ordne nach dem Drehmoment, das das Schaltelement trägt, das größte zuerst.',
  'torque-order.first': 'größtes Drehmoment',
  'torque-order.last': 'kleinstes Drehmoment',
  'torque-order.row': 'Vom größten zum kleinsten: {carried}.',
  'torque-order.reason':
    'Wie viel ein Schaltelement trägt, hängt von seinem Platz im Räderwerk ab, nicht nur davon, wie niedrig der Gang ist.',
  'torque-order.line': '{carried}: das {times}-Fache des Drehmoments am Antrieb.',

  'family.held-push': 'Wohin ein festgehaltenes Teil gedrückt wird',
  'held-push.prompt':
    'Der Motor zieht. In welche Richtung würde das Teil drehen, das jede Bremse hält, wenn die Bremse losließe?',
  'held-push.forward': 'vorwärts, in Drehrichtung des Antriebs',
  'held-push.backward': 'rückwärts, gegen den Antrieb',
  'held-push.nowhere': 'in keine: nichts drückt darauf',
  'held-push.line':
    '{carried}: {push, select, forward {vorwärts} other {rückwärts}}.{known, select, yes { Bei stehendem Abtrieb und gelöster Bremse: {shaft} macht {turns} Umdrehungen in diese Richtung je Umdrehung des Antriebs.} other {}}',
  'held-push.reason':
    'Denk dir den Abtrieb von der Last angehalten und die Bremse gelöst: wohin der Antrieb das Teil dann dreht, dahin drückt er es.',

  'family.set-stripped': 'Verlorene Gänge, wenn ein Planetensatz keine Zähne mehr hat',
  'set-stripped.prompt':
    'Die Zähne von {gearset} sind abgeschert: seine Glieder drehen aneinander vorbei und übertragen kein Drehmoment. Welche Gänge sind verloren, wenn der Motor zieht? Ein Gang ist verloren, wenn er keinen Kraftschluss hat oder mit anderer Übersetzung treibt.',
  'set-stripped.row': 'Ohne {gearset} verloren: {ranges}.',
  'set-stripped.reason':
    'Ein Gang bleibt, wenn seine Schaltelemente das Drehmoment um den Satz herumführen. Dass ein Satz dreht, heißt nicht, dass er arbeitet; und ein Satz, der als Block dreht, kann die Last tragen.',
  'set-stripped.line-kept': 'Gang {range}: treibt wie vorher, durch {gearset} geht kein Drehmoment.',
  'set-stripped.line-other': 'Gang {range}: treibt mit {ratio} : 1, einer anderen Übersetzung.',
  'set-stripped.line-no-drive': 'Gang {range}: ohne {gearset} kein Kraftschluss.',
  'set-stripped.line-output-held': 'Gang {range}: ohne {gearset} ist der Abtrieb festgehalten.',
  'set-stripped.line-tied-up': 'Gang {range}: ohne {gearset} verspannt.',
} as const;
