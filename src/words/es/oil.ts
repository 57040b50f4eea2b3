/** Questions on oil: currents through a shift, bench readings, the manual valve, interlocks. */
export const OIL = {
  'family.solenoid-changes': 'Solenoides en un cambio de marcha',
  'solenoid-changes.prompt':
    'De la marcha {from} a la {to}; se muestran las dos filas. ¿Qué hace la corriente de cada solenoide?',
  'solenoid-changes.prompt-lever':
    'Palanca en {position}, de la marcha {from} a la {to}; se muestran las dos filas. ¿Qué hace la corriente de cada solenoide?',
  'solenoid-changes.switched-on': 'se conecta',
  'solenoid-changes.switched-off': 'se corta',
  'solenoid-changes.stays-on': 'sigue conectada',
  'solenoid-changes.stays-off': 'sigue cortada',
  'solenoid-changes.rows': '{from} {to}',
  'solenoid-changes.line':
    '{solenoid}: la presión en {elements} {change, select, gains {llega} loses {se va} kept {se mantiene} other {sigue sin llegar}}, así que su corriente {sense}.',

  'family.polarity-evidence': 'Lo que dicen las lecturas de banco de un solenoide',
  'polarity-evidence.prompt':
    'Cuatro solenoides sin etiqueta se probaron en el banco, con toda la presión detrás. ¿Qué da cada uno sin corriente?',
  'polarity-evidence.piece': '{letter}: {readings}',
  'polarity-evidence.reading': '{pressure} bar a {current} A',
  'polarity-evidence.full': 'presión total: la corriente la quita',
  'polarity-evidence.none': 'sin presión: la corriente la da',
  'polarity-evidence.dead': 'no sigue a la corriente, así que está mal',
  'polarity-evidence.open': 'las lecturas no lo dicen: falta otra corriente',
  'polarity-evidence.line-full':
    '{letter}, por corriente: {readings}. La presión baja, así que sin corriente es total.',
  'polarity-evidence.line-none':
    '{letter}, por corriente: {readings}. La presión sube, así que sin corriente no hay.',
  'polarity-evidence.line-dead':
    '{letter}, por corriente: {readings}. Igual en las dos, así que no la sigue.',
  'polarity-evidence.line-open':
    '{letter}: {readings}. Una sola lectura a medio camino no dice nada del sentido.',
  'polarity-evidence.reason':
    'Primero pon las lecturas en orden de corriente. Importa hacia dónde va la presión, no lo alta que sea una lectura.',

  'family.valve-cuts': 'Qué deja pasar la válvula manual',
  'valve-cuts.prompt': 'Palanca en {position}. ¿Quién decide si cada uno de estos tiene presión?',
  'valve-cuts.solenoid': 'su solenoide: el paso está abierto',
  'valve-cuts.by-hand': 'la válvula manual: lo alimenta directo',
  'valve-cuts.cut': 'nadie: su paso está cortado',
  'valve-cuts.row': 'Cortado en {position}: {count, plural, =0 {nada} other {{elements}}}.',
  'valve-cuts.reason':
    'Un solenoide solo puede pasar lo que le da la válvula manual. Con el paso cortado, ninguna corriente trae presión.',
  'valve-cuts.line-solenoid': 'Abiertos a su solenoide: {count, plural, =0 {nada} other {{elements}}}.',
  'valve-cuts.line-by-hand':
    'Alimentados por la válvula misma: {count, plural, =0 {nada} other {{elements}}}.',

  'family.interlock': 'Qué impide un enclavamiento',
  'interlock.prompt':
    'Cada uno de estos grupos se pide aplicar junto. ¿Cuáles no deja aplicar el enclavamiento {interlock} tal como se pide?',
  'interlock.prompt-lever':
    'Palanca en {position}, y cada uno de estos grupos se pide aplicar junto. ¿Cuáles no deja aplicar el enclavamiento {interlock} tal como se pide?',
  'interlock.row':
    '{interlock} actúa mientras {count, plural, one {tiene presión {whenApplied}} other {tienen presión {whenApplied}}}, y se la quita a {blocks}.',
  'interlock.reason':
    'Necesita todo lo que espera, y algo a qué quitarle la presión. Si lo demás se trabaría no viene al caso.',
  'interlock.line':
    '{elements}: {off} {count, plural, one {queda} other {quedan}} sin presión. Lo que resta: {does}',
} as const;
