/** What is said before any figure on killing, burning, cleaning and irradiating. */
export const disposal = {
  'disposal.caution.permit and local law decide':
    'The order, the permit and local law decide what is done and how. These figures only help to prepare it; the authority goes before them.',
  'disposal.caution.bees are dead first':
    'The bees are dead before anything is burned, treated or sent away: at dusk, when all are home, by means the authority permits.',
  'disposal.caution.ask about fire bans':
    'Ask about fire bans and clean-air rules for this day and place. If burning is forbidden now, store everything where no bee can enter, marked, until it is allowed.',
  'disposal.caution.keep clear of ground water':
    'Keep pits and baths away from wells, streams, drains and shallow ground water. Ask before digging: cables and pipes.',
  'disposal.caution.two people, water at hand':
    'Two people, water and an extinguisher at hand, the wind watched, nothing dry near by. Stay until nothing glows.',
  'disposal.caution.no petrol on a fire':
    'Never petrol on a fire or near one: its vapour spreads along the ground and explodes. Comb wax is fuel enough.',
  'disposal.caution.honey must not reach bees':
    'Honey that runs out carries spores: no bee may reach it, before, during or after.',
  'disposal.caution.wait, do not light':
    'Pour, close, walk away and wait. No match, no smoker, nothing that sparks; light nothing until the vapour is gone.',
  'disposal.caution.check that they are dead':
    'Look whether the bees are really dead before you go on; in rain and cold some revive the next day.',
  'disposal.caution.only what the label allows':
    'Only what the label and the authority allow for this use, in the amount they allow, with the protection they ask for.',
  'disposal.caution.hot wax burns':
    'Wax above 150 °C burns skin severely: face shield, long gloves, leather boots, no bare arms.',
  'disposal.caution.wax vapour burns':
    'Above 175 °C the vapour can catch fire. Two thermometers, heat that can be cut at once, never left alone.',
  'disposal.caution.wet wood boils over':
    'Wet or dirty wood makes hot wax boil over: scraped clean and dry, let in slowly, the vat not full.',
  'disposal.caution.lid, never water': 'If the wax burns: put the lid on and cut the heat. Never water.',
  'disposal.caution.hot wax is not kerosene':
    'Hot wax means solid paraffin wax. In some countries "paraffin" is the name of kerosene: never that.',
  'disposal.caution.log time and temperature':
    'Write down time and temperature of every dip; without both nobody can say what the heat did.',
  'disposal.caution.eyes, gloves, boots, air':
    'Eye protection, strong waterproof gloves, boots, fresh air, a second person, clean water for rinsing.',
  'disposal.caution.never mix with acid':
    'Never mix bleach with acid, ammonia or another cleaner: it gives off poisonous gas.',
  'disposal.caution.caustic into water':
    'Caustic soda into cold water, a little at a time, never water onto the soda: it boils and spits.',
  'disposal.caution.heat caustic slowly':
    'Heat the bath slowly, leave room above it, and lower the pieces gently: hot caustic boils over, and a splash burns eyes and skin.',
  'disposal.caution.no aluminium or zinc':
    'Nothing of aluminium or zinc in the bath, and no such vessel: it gives off gas that burns.',
  'disposal.caution.caustic cleans only':
    'Caustic soda cleans. By itself it does not make equipment free of spores, and it proves nothing.',
  'disposal.caution.lift by two': 'Lift full boxes with two people; a wrapped unit weighs at most 25 kg.',
  'disposal.caution.dose from the certificate':
    "What counts is the lowest dose delivered, from the operator's certificate, not the dose ordered.",
} as const;
