import { usualOpeningRule } from '@combside/casework/plan/opening-rules';
import { usualPlanning, visitGrounds } from '@combside/casework/plan/planning-settings';
import { useSearchParams } from 'wouter';

/** How planning ranks and reckons, as its address says; what is usual is not written there. */
export interface PlanningAddress {
  readonly rule: string;
  /** 0 to 1. */
  readonly sensitivity: number;
  /** Points in the order of the grounds. */
  readonly weights: readonly number[];
  /** An apiary to be ticked at once. */
  readonly take: string | null;
  /** The question to the office. */
  readonly asked: string;
  change(part: { rule?: string; sensitivity?: number; weights?: readonly number[] }): void;
}

const usualWeights = visitGrounds.map((ground) => usualPlanning.weights[ground].value);

/** Reads and changes the settings of planning in the address, so that a link shows the same ranking. */
export function usePlanningAddress(): PlanningAddress {
  const [params, setParams] = useSearchParams();
  const said = (params.get('weights') ?? '').split(',').map(Number);
  const sensitivity = Number(params.get('sensitivity') ?? Number.NaN);
  const now = {
    rule: params.get('rule') ?? usualOpeningRule.id,
    sensitivity: sensitivity >= 0 && sensitivity <= 1 ? sensitivity : usualPlanning.lookSensitivity.value,
    weights:
      said.length === usualWeights.length && said.every((one) => Number.isFinite(one) && one >= 0)
        ? said
        : usualWeights,
  };
  const query = new URLSearchParams({
    limit: '150',
    rule: now.rule,
    sensitivity: String(now.sensitivity),
    weights: now.weights.join(','),
  });
  return {
    ...now,
    take: params.get('take'),
    asked: `/api/planning?${query.toString()}`,
    change(part) {
      const next = { ...now, ...part };
      setParams(
        (before) => {
          const written = new URLSearchParams(before);
          const put = (name: string, value: string, usual: string) =>
            value === usual ? written.delete(name) : written.set(name, value);
          put('rule', next.rule, usualOpeningRule.id);
          put('sensitivity', String(next.sensitivity), String(usualPlanning.lookSensitivity.value));
          put('weights', next.weights.join(','), usualWeights.join(','));
          return written;
        },
        { replace: true },
      );
    },
  };
}
