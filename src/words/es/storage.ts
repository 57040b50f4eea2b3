/** What went wrong with storage: what is safe first, then what to do. */
export const STORAGE = {
  'storage.full':
    'Todo lo guardado hasta ahora está a salvo, pero en este dispositivo ya no hay espacio. Libera espacio y vuelve a tocar Comprobar.',
  'storage.blocked':
    'Tus respuestas están a salvo. Detent sigue abierto en otra pestaña, que las tiene: cierra esa pestaña y vuelve a intentarlo.',
  'storage.newer':
    'Tus respuestas están a salvo y sin cambios. Un Detent más nuevo las tomó, quizá en otra pestaña: recarga esta página.',
  'storage.deleted':
    'Lo que se guardaba aquí se quitó de este dispositivo desde otra pestaña, así que ya no se puede guardar nada con este nombre. Recarga esta página.',
  'storage.elsewhere':
    'Tus respuestas están a salvo. Esta práctica siguió en otra pestaña, así que esta no se guardó: sigue allá, o toca Seguir aquí.',
  'storage.unavailable':
    'Este navegador no le da ahora a Detent un lugar para guardar respuestas. Puede ser por una ventana privada: abre Detent en una ventana normal, o recarga.',
  'storage.unwritten':
    'Esto no se pudo guardar ahora; quizá ya no hay espacio en el dispositivo. Lo que se guardó antes está a salvo. Libera espacio y vuelve a tocar.',
  'storage.unreadable':
    '{count, plural, one {Una respuesta guardada} other {# respuestas guardadas}} no {count, plural, one {se puede leer con esta versión y queda fuera} other {se pueden leer con esta versión y quedan fuera}}. No se borró nada.',
} as const;
