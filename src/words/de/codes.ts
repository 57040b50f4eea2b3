/** Questions on trouble codes, in German. */
export const CODES = {
  'code-kind.circuit': 'Stromkreis',
  'code-kind.performance': 'Funktion',
  'code-kind.stuck-off': 'klemmt ausgeschaltet',
  'code-kind.stuck-on': 'klemmt eingeschaltet',
  'code-kind.electrical': 'elektrisch',
  'code-kind.intermittent': 'sporadisch',
  'code-kind.ratio': 'falsche Übersetzung',
  'codes.lettered': '{code}: Magnetventil {letter}, {kind}',
  'codes.with-meaning': '{code}: {meaning}',
  'codes.watches': '{code} überwacht bei diesem Getriebe: {part}.',
  'codes.watches-meaning': '{code} überwacht: {part}. {meaning}',

  'family.code-watches': 'Welches Teil ein Fehlercode meint',
  'code-watches.prompt':
    'Jeder dieser Fehlercodes nennt ein Magnetventil mit einem Buchstaben. Welches Magnetventil ist das bei diesem Getriebe?',
  'code-watches.reason':
    'Die Norm sagt nur „Magnetventil B“. Welches das ist, legt jeder Hersteller selbst fest: nimm es aus den Unterlagen, nie aus der Reihenfolge der Buchstaben.',

  'family.codes-that-set': 'Fehlercodes, die ein Fehler setzt',
  'codes-that-set.prompt':
    'Angenommen: {fault}. Alles andere ist in Ordnung, und jeder Gang wird gefahren. Wird jeder dieser Fehlercodes gesetzt?',
  'code-state.sets': 'wird gesetzt',
  'code-state.could': 'kann gesetzt werden',
  'code-state.cannot': 'kann nicht gesetzt werden',
  'codes-that-set.row':
    'Angenommen: {fault}. {count, plural, =0 {Sicher gesetzt wird keiner davon.} one {Gesetzt wird: {codes}.} other {Gesetzt werden: {codes}.}}',
  'codes-that-set.reason':
    'Ein Stromkreis-Code wird gesetzt, wo sein eigener Stromkreis tot ist. Ein Code für falsche Übersetzung braucht beide Drehzahlen und einen Gang, der mit anderer Übersetzung treibt.',
  'codes-that-set.because-circuit-sets': '{code}: sein Stromkreis ist tot, also wird er gesetzt.',
  'codes-that-set.because-circuit-could':
    '{code}: die Unterlagen klären seinen Stromkreis nicht, er kann also gesetzt werden.',
  'codes-that-set.because-circuit-cannot':
    '{code}: sein Stromkreis ist in Ordnung, er kann also nicht gesetzt werden.',
  'codes-that-set.because-ratio-sets':
    '{code}: sein Gang treibt mit anderer Übersetzung, und beide Drehzahlen kommen an.',
  'codes-that-set.because-ratio-could':
    '{code}: sein Gang treibt nicht, wie er soll, aber es stellt sich keine andere Übersetzung fest ein. Er kann gesetzt werden.',
  'codes-that-set.because-ratio-cannot':
    '{code}: sein Gang treibt wie in der Matrix, oder eine Drehzahl fehlt; eine falsche Übersetzung ist also nicht zu sehen.',

  'family.code-roots': 'Ursache und Folge bei Fehlercodes',
  'code-roots.prompt': 'Angenommen: {fault}. Wie steht jeder dieser Fehlercodes zu diesem Fehler?',
  'code-role.root': 'zeigt auf das Teil',
  'code-role.follows': 'ist nur Folge',
  'code-role.cannot': 'kann nicht daher kommen',
  'code-roots.row':
    '{count, plural, =0 {Keiner davon zeigt auf das Teil selbst.} one {Auf das Teil selbst zeigt: {codes}.} other {Auf das Teil selbst zeigen: {codes}.}}',
  'code-roots.reason':
    'Ein Code, der genau dieses Teil überwacht, kommt zuerst; Codes für falsche Übersetzung folgen aus dem, was das Teil nicht mehr tut.',
  'code-roots.because-root': '{code} überwacht genau das fehlerhafte Teil.',
  'code-roots.because-follows': '{code} überwacht etwas anderes, das durch den Fehler nicht mehr stimmt.',
  'code-roots.because-cannot': '{code} überwacht etwas, das der Fehler nicht berührt.',
} as const;
