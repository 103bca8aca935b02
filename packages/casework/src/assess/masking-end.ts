import { type MaskingEvent, maskedUntil } from '@combside/law/masking';
import type { Pack } from '@combside/law/pack';
import type { ExaminationBody } from '@combside/record/kinds/examination';

/**
 * Until when "nothing seen" at this look means nothing, over all notifiable conditions of the pack; null when no medicine
 * or change of combs masks it.
 */
export function maskingEnd(examination: ExaminationBody, pack: Pack): string | null {
  const events: MaskingEvent[] = [];
  if (examination.medicines.answer === 'yes') {
    events.push({ what: 'medicine', lastOn: examination.medicines.lastOn });
  }
  if (examination.combChanges.answer === 'yes') {
    events.push({ what: 'comb change', lastOn: examination.combChanges.lastOn });
  }
  const ends = pack.notifiable
    .map((one) => maskedUntil(events, one.condition, pack, examination.observedAt))
    .filter((one) => one !== null);
  return ends.sort().at(-1) ?? null;
}
