/** Questions about work in steps, in German: what may come next, in which order, why, and until when. */
export const PROCEDURE = {
  'step.quoted': '„{step}“',
  'step.first': 'Zuerst',
  'step.last': 'Zuletzt',
  'step.order': 'In Reihenfolge: {steps}',
  'step.before': '„{earlier}“ kommt vor „{later}“',
  'step.because': '„{earlier}“ kommt vor „{later}“: {reason}',

  'family.next-steps': 'Was als nächstes kommen darf',
  'next-steps.prompt':
    'Arbeit: {work}. Was abgehakt ist, ist getan, und alles, was davor kommen muss. Welche von diesen Schritten dürfen jetzt getan werden?',
  'next-steps.row': 'Jetzt möglich: {steps}',
  'next-steps.now': '„{step}“ Alles, was er braucht, ist getan.',

  'family.step-order': 'Schritte in Reihenfolge',
  'step-order.prompt':
    'Arbeit: {work}. Bringe diese Schritte in die Reihenfolge, in der sie getan werden müssen.',

  'family.step-reason': 'Warum ein Schritt zuerst kommt',
  'step-reason.prompt': 'Warum muss „{earlier}“ vor „{later}“ kommen?',
  'step-reason.reason': 'Das Blatt nennt für diese zwei Schritte diesen Grund.',

  'family.step-skipped': 'Ein ausgelassener Schritt',
  'step-skipped.prompt': 'Jemand lässt diesen Schritt aus: „{step}“ Was kommt dabei heraus?',
  'step-skipped.reason': 'Das vermerkt das Blatt zu diesem Schritt.',
  'step-skipped.line': '„{step}“ ausgelassen: {outcome}',

  'family.assembly-order': 'Zusammenbau in Reihenfolge',
  'assembly-order.prompt':
    'Arbeit: {work}. Bringe diese Schritte des Zusammenbaus in eine Reihenfolge, die geht. Es ist nicht einfach das Zerlegen rückwärts.',
  'assembly-order.row': 'Eine Reihenfolge, die geht: {steps}',

  'family.last-chance': 'Die letzte Gelegenheit zum Messen',
  'last-chance.prompt':
    'Gebraucht wird: „{check}“ Arbeit: {work}. Das geht nur während eines Teils der Arbeit. Welcher Schritt nimmt die letzte Gelegenheit?',
  'last-chance.row': '„{check}“ Vor diesem Schritt oder gar nicht: „{closing}“',
  'last-chance.needs':
    '{count, plural, =0 {Es geht von Anfang an.} other {Es geht, sobald das getan ist: {needs}}}',
} as const;
