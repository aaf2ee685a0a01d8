import type { ComponentChildren } from 'preact';

/** Things of one kind on the tablet's sheet, under their title. */
export function Group({
  title,
  note,
  children,
}: {
  title: string;
  note?: string;
  children: ComponentChildren;
}) {
  return (
    <fieldset class="tablet-group">
      <legend>{title}</legend>
      <div class="choices">{children}</div>
      {note && <p class="small quiet">{note}</p>}
    </fieldset>
  );
}
