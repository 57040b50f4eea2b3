/** Questions on working safely. Each defers to the maker's information, local law and qualified supervision. */
export const SAFETY = {
  'hazard.roll-away': 'vehículo que rueda',
  'hazard.moving-test': 'movimiento en una prueba',
  'hazard.hot-fluid': 'fluido caliente',
  'hazard.pressure': 'aceite a presión',
  'hazard.lift': 'carga que cae',
  'hazard.handling': 'pesado y resbaloso',
  'hazard.air': 'aire comprimido',
  'hazard.stored-energy': 'resortes y anillos',
  'hazard.rotating': 'piezas que giran',
  'hazard.electrical': 'electricidad',
  'hazard.high-voltage': 'alto voltaje',
  'hazard.chemicals': 'químicos',
  'hazard.heat': 'calor',
  'hazard.road-test': 'tráfico',
  'hazard-harm.roll-away':
    'Un vehículo que rueda aplasta a quien esté debajo o delante. Cálzalo, en los dos sentidos, antes del primer tornillo.',
  'hazard-harm.moving-test':
    'Una unidad que transmite cuando nadie lo espera mueve el vehículo. Frenos puestos, nadie delante ni detrás.',
  'hazard-harm.hot-fluid':
    'El fluido caliente quema a través de la ropa. Deja que se enfríe, con la cara a un lado.',
  'hazard-harm.pressure':
    'Un chorro de aceite atraviesa la piel; es una emergencia inmediata, por pequeño que se vea. Suelta antes la presión.',
  'hazard-harm.lift':
    'Lo que cuelga puede caer. Equipo con capacidad marcada, seguros puestos, nadie debajo.',
  'hazard-harm.handling': 'Lo pesado y aceitoso se resbala. Dos personas, o la grúa.',
  'hazard-harm.air':
    'El aire expulsa pistones y lanza polvo a los ojos. Baja presión y regulado, trapo sobre el agujero, ojos y oídos protegidos.',
  'hazard-harm.stored-energy':
    'Un anillo o resorte que se suelta sale volando. Comprímelo derecho, sin la cara enfrente, y suéltalo hasta su largo total.',
  'hazard-harm.rotating': 'Lo que gira atrapa ropa, pelo y guantes. Mantente lejos, sin nada suelto.',
  'hazard-harm.electrical':
    'Un corto quema, y una batería suelta gas. Sigue el orden del fabricante para desconectar.',
  'hazard-harm.high-voltage':
    'Mata. Solo personas capacitadas y autorizadas, con el sistema comprobado sin voltaje.',
  'hazard-harm.chemicals':
    'El solvente y el aceite dañan la piel, los pulmones y el suelo. Guantes, aire, y la hoja de seguridad a la mano.',
  'hazard-harm.heat':
    'Las piezas calientes queman y encienden el aceite. Guantes, sin llama cerca del fluido.',
  'hazard-harm.road-test':
    'Quien maneja, maneja; otra persona lee. Solo como lo permitan la ley, el seguro y el fabricante.',

  'family.step-hazards': 'El peligro de un paso',
  'step-hazards.prompt': '¿Qué peligro va con qué paso?',
  'step-hazards.row': '{step} Peligro: {hazard}.',

  'family.stored-energy': 'Qué puede salir volando',
  'stored-energy.prompt':
    '¿En cuáles de estos pasos algo puede salir volando o a chorro si no se retiene antes?',
  'stored-energy.row':
    '{count, plural, one {# de estos pasos suelta} other {# de estos pasos sueltan}} algo.',
  'stored-energy.reason':
    'Un anillo tensado, un resorte comprimido, aire o aceite detrás de un pistón: guardan su fuerza hasta que un paso la suelta.',

  'family.roll-away': 'Qué sujeta todavía el vehículo',
  'roll-away.prompt':
    'Un vehículo está en una pendiente, con el motor apagado. Puesto: {holding}. No puesto: {missing}. ¿Qué acciones, cada una sola, lo dejarían sin nada que lo sujete?',
  'roll-away.holds-pawl': 'palanca en estacionamiento',
  'roll-away.holds-brake': 'freno de mano, comprobado que sujeta',
  'roll-away.holds-chocks': 'ruedas calzadas en los dos sentidos',
  'roll-away.not-pawl': 'estacionamiento',
  'roll-away.not-brake': 'el freno de mano',
  'roll-away.not-chocks': 'las calzas',
  'roll-away.action-draw-shaft': 'sacar los ejes de transmisión',
  'roll-away.action-lever-out-of-park': 'mover a mano la palanca selectora en la unidad',
  'roll-away.action-unit-down': 'bajar la unidad',
  'roll-away.action-brake-off': 'soltar el freno de mano',
  'roll-away.action-chocks-away': 'quitar las calzas',
  'roll-away.action-drain-fluid': 'drenar el fluido',
  'roll-away.action-pan-off': 'quitar el cárter',
  'roll-away.row': 'Solo esto sujeta: {holding}. Lo que lo quite no deja nada.',
  'roll-away.reason-pawl':
    'El trinquete traba la salida dentro de la unidad. Llega a las ruedas por los ejes: sin ejes, sin unidad, o con la palanca movida, nada sujeta.',
  'roll-away.reason-brake':
    'Solo sujeta el freno de mano. El estacionamiento no está puesto, y no hay nada en las ruedas.',
  'roll-away.reason-chocks':
    'Solo sujetan las calzas. El estacionamiento no está puesto, y el freno está suelto.',
  'roll-away.pawl': 'Nunca te confíes solo del estacionamiento: es lo primero que este trabajo desarma.',
  'roll-away.two-means':
    'En un vehículo real: calzas en los dos sentidos y un freno comprobado antes del primer tornillo, en piso nivelado. La información del fabricante y las reglas de tu taller van primero.',

  'family.sling-load': 'Carga en un ramal de eslinga',
  'sling-load.prompt':
    'Carga: {name}. Pesa {mass} {unit} y cuelga de dos ramales iguales de una eslinga, cada uno a {angle}° de la horizontal. ¿Cuánto lleva cada ramal, en {unit}? Un decimal; vale ± {tolerance}.',
  'sling-load.row': '{mass} ÷ (2 × sen {angle}°) = {mass} ÷ (2 × {sine}) = {load} {unit}.',
  'sling-load.reason':
    'Los dos ramales juntos tiran hacia arriba tanto como el peso, pero un ramal inclinado tira también de lado: cuanto más acostado, más lleva.',
  'sling-load.label':
    'Compáralo con la etiqueta de la eslinga para ese ángulo. Sin una etiqueta legible, la eslinga no se usa.',

  'family.look-up-first': 'Usarlo, o consultarlo antes',
  'look-up-first.prompt':
    'Estas cifras están en los apuntes del taller. ¿Cuáles se pueden usar como están, y cuáles hay que consultar antes en la información del fabricante?',
  'look-up-first.torque': 'torque, {name}',
  'look-up-first.figure': 'Cifra',
  'look-up-first.source': 'De',
  'look-up-first.verified': 'Revisó',
  'look-up-first.by': '{by}, {on}',
  'look-up-first.nobody': 'nadie todavía',
  'look-up-first.as-noted': 'usar como está',
  'look-up-first.look-up': 'consultar antes',
  'look-up-first.row': 'Nadie ha revisado: {names}.',
  'look-up-first.reason':
    'Una nota dice lo que alguien leyó o midió. Solo una segunda revisión la hace una cifra para trabajar.',
  'look-up-first.maker-wins':
    'Donde una nota y la información del fabricante difieran, manda la información del fabricante.',
} as const;
