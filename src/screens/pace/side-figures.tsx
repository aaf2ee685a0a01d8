import { Position } from './position';
import { Tally } from './tally';
import { TurnAside, type TurnAsideProps } from './turn-aside';

/** Beside this part's time: the position of the turn, its count, and what is asked or expected. */
export function SideFigures(props: TurnAsideProps) {
  return (
    <>
      <Position turn={props.turn} />
      <Tally turn={props.turn} />
      <TurnAside {...props} />
    </>
  );
}
