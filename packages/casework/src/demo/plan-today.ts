import { instantOf } from '@combside/calendar/instant';
import { planVisit } from '../plan/today.ts';
import { carriedOut } from './carried-out.ts';
import { type DemoPerson, inspectorOfTheDay, inspectors, officeLead } from './people.ts';
import type { DemoRegister } from './register.ts';
import type { Truth } from './truth.ts';
import type { World } from './world.ts';

/**
 * What the office planned yesterday for today: for the inspector of the day the apiary of the journey (a contact of the
 * outbreak) and two routine visits, one late one, and one visit for each of the others.
 *
 * @returns the visits of the inspector of the day, the journey first
 */
export function planToday(world: World, register: DemoRegister, truth: Truth): string[] {
  const others = register.apiaries.filter((one) => !truth.outbreak.includes(one));
  const plan = (inspector: DemoPerson, apiary: string, reason: string, daysAgo: number, hour: number): string => {
    const at = world.at(1, 15) + planned.length * 60_000;
    const visit = world.ledger.newId(at);
    const act = planVisit({
      visit,
      planned: null,
      apiary: world.ledger.apiary(apiary),
      inspector: inspector.id,
      reason,
      plannedFor: instantOf(world.at(daysAgo, hour)),
    });
    world.ledger.write({ author: officeLead.id, device: officeLead.device.id, at }, carriedOut(act).proposals);
    planned.push(visit);
    return visit;
  };
  const planned: string[] = [];
  const mine = [
    plan(inspectorOfTheDay, truth.journey.apiary, 'contact', 0, 9),
    plan(inspectorOfTheDay, others[3] as string, 'routine', 0, 12),
    plan(inspectorOfTheDay, others[9] as string, 'routine', 0, 14),
    plan(inspectorOfTheDay, others[15] as string, 'look again', 3, 10),
  ];
  inspectors.slice(1).forEach((one, index) => {
    plan(one, others[20 + index] as string, 'routine', 0, 10);
  });
  return mine;
}
