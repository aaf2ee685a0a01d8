import type { tabletWords as english } from '../en/tablet';

/** Words of what a tablet keeps for itself: how it looks, and how it answers. */
export const tabletWords: typeof english = {
  title: 'Esta tableta',
  close: 'Cerrar',
  help: 'Ayuda',
  light: 'Luz',
  themes: { paper: 'Interior', sun: 'Sol', dim: 'Poca luz' },
  hand: 'Mano que toca',
  hands: { right: 'Derecha', left: 'Izquierda' },
  handNote:
    'La superficie grande queda bajo el pulgar de esta mano; Parar y los nombres de las pantallas, al otro lado.',
  answer: 'Con cada toque',
  sound: 'Sonido',
  vibration: 'Vibración',
  answerNote: 'Cada toque se ve en todo caso.',
  keys: 'Teclas y pedales',
  anyKey: 'Vale cualquier tecla',
  taughtKey: 'Solo la tecla enseñada, Enter y Espacio',
  teach: 'Enseñar un pedal o tecla',
  pressNow: 'Pulsar ahora',
  known: (key) => `ahora: ${key}`,
  scanner: 'Un escáner que escribe el código de una pieza y Enter elige esa pieza.',
  language: 'Idioma',
  languageNote:
    'La página se carga de nuevo; los relojes siguen. Lo que se ha tecleado y aún no se ha aceptado se pierde.',
  languageWaits: 'Ahora no: la página se carga de nuevo y se perdería lo que está sin guardar.',
  languageMissing: (name: string) =>
    `${name} todavía no está en esta tableta. Sus palabras llegan cuando la aplicación arranca con red, y se quedan.`,
  keep: 'Fijada en Ritmo',
  keepNow: 'Fijar esta tableta en Ritmo',
  keepNoMore: 'Volver a permitirlo todo',
  keepHow: 'Vale enseguida: el resto solo se abre entonces con el PIN de supervisión.',
  keepNoPin: 'Para esto hace falta un PIN de supervisión.',
  kept: 'Fija en Ritmo: el resto pide el PIN.',
  keptOpen: 'Abierta: todo se puede usar hasta que se vuelva a abrir Ritmo.',
};
