/** Questions on faults and on speeds read from the scan tool, in German. */
export const FAULTS = {
  'outcome.works': 'Gang {range}: arbeitet wie in der Matrix.',
  'outcome.covered': 'Gang {range}: Kraftschluss noch über {oneWays}, aber der Motor bremst nicht mehr.',
  'outcome.unneeded': 'Gang {range}: treibt auch ohne {element} genauso.',
  'outcome.no-drive': 'Gang {range}: nichts nimmt die Last auf, also kein Kraftschluss.',
  'outcome.output-held': 'Gang {range}: der Abtrieb ist festgehalten.',
  'outcome.tied-up': 'Gang {range}: verspannt, der Antrieb kann nicht drehen.',
  'outcome.becomes': 'Gang {range}: treibt wie Gang {becomes}, mit {ratio} : 1.',
  'outcome.other-ratio': 'Gang {range}: treibt mit {ratio} : 1, der Übersetzung keines Gangs.',

  'family.element-fails': 'Verlorene Gänge, wenn ein Schaltelement ausfällt',
  'element-fails.prompt':
    '{element} schließt nicht mehr. Welche Gänge sind verloren, wenn der Motor zieht? Ein Gang ist verloren, wenn er keinen Kraftschluss hat oder mit anderer Übersetzung treibt.',
  'element-fails.prompt-one-way':
    '{element} sperrt nicht mehr. Welche Gänge sind verloren, wenn der Motor zieht? Ein Gang ist verloren, wenn er keinen Kraftschluss hat oder mit anderer Übersetzung treibt.',
  'element-fails.row': 'Die Matrix nutzt {element} in: {ranges}.',
  'element-fails.reason': 'Ohne dieses Element verloren: {ranges}.',

  'family.element-stuck': 'Gänge, wenn ein Schaltelement nicht mehr löst',
  'element-stuck.prompt':
    '{element} hängt geschlossen: es löst nie. Was macht jeder Gang, wenn der Motor zieht?',
  'element-stuck.works': 'arbeitet wie in der Matrix',
  'element-stuck.other-ratio': 'treibt mit anderer Übersetzung',
  'element-stuck.tied-up': 'verspannt sich',
  'element-stuck.no-drive': 'kein Kraftschluss',
  'element-stuck.row': 'Die Matrix nutzt {element} in: {ranges}.',
  'element-stuck.reason':
    'Ein Schaltelement mehr verspannt das Räderwerk, außer wenn die verbundenen Wellen dort gleich drehen können.',

  'family.actual-range': 'Der Gang, den die Drehzahlen zeigen',
  'actual-range.prompt':
    'Gang {commanded} ist angefordert. Der Diagnosetester liest {input} U/min am Antrieb und {output} U/min am Abtrieb, beide ruhig. In welchem Gang ist das Getriebe wirklich?',
  'actual-range.row': '{input} ÷ {output} = {seen}.',
  'actual-range.reason':
    'Das ist die Übersetzung von Gang {range} ({ratio} : 1), nicht die des angeforderten Gangs {commanded} ({commandedRatio} : 1).',
  'actual-range.reason-commanded':
    'Das ist die Übersetzung von Gang {range} ({ratio} : 1), dem angeforderten.',
  'actual-range.line': 'Gang {range}: {output} × {ratio} = {expected} U/min am Antrieb.',

  'family.slip-speed': 'Schlupf aus zwei Drehzahlen',
  'slip-speed.prompt-rpm':
    'Gang {range} ist angefordert, Übersetzung {ratio} : 1. Der Diagnosetester liest {input} U/min am Antrieb und {output} U/min am Abtrieb. Um wie viele U/min schlupft das Getriebe? Bis {tolerance} U/min Abweichung gilt als richtig.',
  'slip-speed.prompt-share':
    'Gang {range} ist angefordert, Übersetzung {ratio} : 1. Der Diagnosetester liest {input} U/min am Antrieb und {output} U/min am Abtrieb. Wie groß ist der Schlupf, in Prozent der Antriebsdrehzahl? Bis {tolerance} Abweichung gilt als richtig.',
  'slip-speed.row': 'Ohne Schlupf dreht der Antrieb mit {output} × {ratio} = {expected} U/min.',
  'slip-speed.reason':
    'Schlupf ist, was von der Antriebsdrehzahl übrig bleibt: {input} − {expected} = {slip} U/min.',
  'slip-speed.share': '{slip} ÷ {input} = {share} % der Antriebsdrehzahl.',
  'slip-speed.not-another': '{input} ÷ {output} = {seen}, die Übersetzung keines anderen Gangs.',
} as const;
