import { useEffect, useState } from 'preact/hooks';
import { readStandards } from '../../../application/shop/read-standards';
import { readStudiesOfPart, type StudyOfPart } from '../../../application/study/read-studies-of-part';
import { noStandards, type PartStandards } from '../../../domain/shop/fold-standards';
import type { Part } from '../../../domain/shop/shop';
import { useApp } from '../../app';
import { useLogChanges } from '../../use-log-changes';

export interface KnownOfPart {
  readonly studies: readonly StudyOfPart[];
  readonly known: PartStandards;
}

/** The studies and standards of a part, read again with every record. */
export function useStudiesOfPart(part: Part | undefined): KnownOfPart | 'reading' | 'failed' {
  const { bench } = useApp();
  const [found, setFound] = useState<KnownOfPart | 'reading' | 'failed'>('reading');
  const changes = useLogChanges();
  useEffect(() => {
    if (!part) return;
    let isCurrent = true;
    Promise.all([readStudiesOfPart(bench, part), readStandards(bench)]).then(
      ([studies, standards]) =>
        isCurrent && setFound({ studies, known: standards.get(part.id) ?? noStandards }),
      () => isCurrent && setFound('failed'),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, part, changes]);
  return found;
}
