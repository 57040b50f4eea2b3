/** Questions on trouble codes. */
export const CODES = {
  'code-kind.circuit': 'circuito',
  'code-kind.performance': 'rendimiento',
  'code-kind.stuck-off': 'atascado sin aplicar',
  'code-kind.stuck-on': 'atascado aplicado',
  'code-kind.electrical': 'eléctrico',
  'code-kind.intermittent': 'intermitente',
  'code-kind.ratio': 'relación incorrecta',
  'codes.lettered': '{code}: solenoide {letter}, {kind}',
  'codes.with-meaning': '{code}: {meaning}',
  'codes.watches': '{code} vigila {part} en esta unidad.',
  'codes.watches-meaning': '{code} vigila {part}. {meaning}',

  'family.code-watches': 'A qué pieza se refiere un código',
  'code-watches.prompt':
    'Cada uno de estos códigos nombra un solenoide con una letra. ¿Qué solenoide es en esta unidad?',
  'code-watches.reason':
    'La norma solo dice “solenoide B”. Cuál es lo fija cada fabricante: tómalo del registro, nunca del orden de las letras.',

  'family.codes-that-set': 'Códigos que registra una falla',
  'codes-that-set.prompt':
    'Supón que {fault}. Todo lo demás está bien, y se manejan todas las marchas. ¿Se registra cada uno de estos códigos?',
  'code-state.sets': 'se registra',
  'code-state.could': 'podría registrarse',
  'code-state.cannot': 'no puede registrarse',
  'codes-that-set.row':
    'Supón que {fault}: {count, plural, =0 {ninguno de estos se registra con seguridad} one {se registra {codes}} other {se registran {codes}}}.',
  'codes-that-set.reason':
    'Un código de circuito se registra donde su propio circuito está muerto. Un código de relación incorrecta necesita las dos velocidades y una marcha que transmita con otra relación.',
  'codes-that-set.because-circuit-sets': '{code}: su circuito está muerto, así que se registra.',
  'codes-that-set.because-circuit-could':
    '{code}: el registro no aclara su circuito, así que podría registrarse.',
  'codes-that-set.because-circuit-cannot': '{code}: su circuito está bien, así que no puede registrarse.',
  'codes-that-set.because-ratio-sets':
    '{code}: su marcha transmite con otra relación, y se oyen las dos velocidades.',
  'codes-that-set.because-ratio-could':
    '{code}: su marcha no transmite como debe, pero no sale otra relación estable. Podría registrarse.',
  'codes-that-set.because-ratio-cannot':
    '{code}: su marcha transmite como dice la tabla, o falta una velocidad, así que no se ve una relación incorrecta.',

  'family.code-roots': 'Causa y consecuencia entre códigos',
  'code-roots.prompt': 'Supón que {fault}. ¿Qué tiene que ver cada uno de estos códigos con esa falla?',
  'code-role.root': 'señala la pieza',
  'code-role.follows': 'solo es consecuencia',
  'code-role.cannot': 'no puede venir de ahí',
  'code-roots.row':
    '{count, plural, =0 {Ninguno de estos señala la pieza misma.} one {{codes} señala la pieza misma.} other {{codes} señalan la pieza misma.}}',
  'code-roots.reason':
    'Primero va el código que vigila la pieza misma; los de relación incorrecta vienen de lo que esa pieza ya no hace.',
  'code-roots.because-root': '{code} vigila justo la pieza con la falla.',
  'code-roots.because-follows': '{code} vigila otra cosa, que sale mal por culpa de la falla.',
  'code-roots.because-cannot': '{code} vigila algo que la falla no toca.',
} as const;
