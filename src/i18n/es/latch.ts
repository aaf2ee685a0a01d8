import type { latchWords as english } from '../en/latch';
import { clockFace } from '../format-duration';

/** Words of the supervisor's PIN. */
export const latchWords: typeof english = {
  title: 'PIN de supervisión',
  what: 'Impide que alguien de paso cambie piezas, objetivos, métodos, suplementos y motivos, o restaure una copia en esta tableta. No es una caja fuerte: no oculta nada ni cierra datos, y quien tenga la tableta una hora, o una copia de los registros, puede saltárselo.',
  off: 'No hay PIN.',
  on: 'Hay un PIN. Medir no lo pide, ni un código nuevo, ni en Ritmo una pieza nueva sin objetivo; cambiar estándares, sí.',
  open: 'Abierto para cambios hasta que se abra Ritmo.',
  shut: 'Bloqueado: cambiar esto pide el PIN de supervisión.',
  pin: 'PIN',
  give: 'Desbloquear',
  close: 'Bloquear de nuevo',
  newPin: 'PIN nuevo, de 4 a 12 cifras',
  again: 'El mismo otra vez',
  current: 'El PIN actual',
  set: 'Poner PIN',
  change: 'Cambiar o quitar el PIN',
  changeTo: 'Cambiar el PIN',
  remove: 'Quitar el PIN',
  cancel: 'Cancelar',
  wasSet: 'El PIN está puesto.',
  wasRemoved: 'Se ha quitado el PIN.',
  shape: 'Un PIN tiene de cuatro a doce cifras.',
  differs: 'Los dos PIN son distintos.',
  checking: 'Comprobando …',
  wrong: 'Ese no es el PIN.',
  wait: (ms) => `Demasiados erróneos. El siguiente se acepta dentro de ${clockFace(ms)}.`,
  noCryptography: 'Este navegador no tiene criptografía aquí; abrir la aplicación en una dirección https.',
  forgotten:
    'Un PIN olvidado no se recupera: nada aquí lo dice, lo restablece ni lo quita. Lo que bloquea sigue bloqueado, también en toda tableta que tome una copia; medir, Repaso y las copias siguen. Por eso, anotarlo y guardarlo con las llaves de supervisión.',
};
