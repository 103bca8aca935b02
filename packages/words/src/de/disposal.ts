/** Was vor jeder Zahl zum Abtöten, Verbrennen, Reinigen und Bestrahlen gesagt wird. */
export const disposal = {
  'disposal.caution.permit and local law decide':
    'Anordnung, Genehmigung und örtliches Recht bestimmen, was geschieht und wie. Diese Zahlen helfen nur bei der Vorbereitung; die Behörde geht vor.',
  'disposal.caution.bees are dead first':
    'Die Bienen sind tot, bevor etwas verbrannt, behandelt oder verschickt wird: in der Dämmerung, wenn alle zu Hause sind, mit Mitteln, die die Behörde erlaubt.',
  'disposal.caution.ask about fire bans':
    'Nach Feuerverboten und Vorschriften zur Luftreinhaltung für diesen Tag und Ort fragen. Ist Verbrennen gerade verboten, alles bienendicht und gekennzeichnet lagern, bis es erlaubt ist.',
  'disposal.caution.keep clear of ground water':
    'Gruben und Bäder weit weg von Brunnen, Bächen, Abläufen und hohem Grundwasser. Vor dem Graben nach Kabeln und Leitungen fragen.',
  'disposal.caution.two people, water at hand':
    'Zu zweit, mit Wasser und Feuerlöscher, den Wind im Auge, nichts Trockenes in der Nähe. Bleiben, bis nichts mehr glimmt.',
  'disposal.caution.no petrol on a fire':
    'Niemals Benzin ins Feuer oder in seine Nähe: Die Dämpfe kriechen am Boden und explodieren. Das Wachs der Waben brennt gut genug.',
  'disposal.caution.honey must not reach bees':
    'Auslaufender Honig trägt Sporen: Keine Biene darf daran, weder vorher noch dabei noch danach.',
  'disposal.caution.wait, do not light':
    'Eingießen, schließen, weggehen und warten. Kein Streichholz, kein Smoker, nichts, was Funken schlägt; nichts anzünden, bis die Dämpfe weg sind.',
  'disposal.caution.check that they are dead':
    'Nachsehen, ob die Bienen wirklich tot sind, bevor es weitergeht; bei Regen und Kälte erholen sich manche bis zum nächsten Tag.',
  'disposal.caution.only what the label allows':
    'Nur was Etikett und Behörde für diesen Zweck erlauben, in der erlaubten Menge und mit dem verlangten Schutz.',
  'disposal.caution.hot wax burns':
    'Wachs über 150 °C verbrennt die Haut schwer: Gesichtsschutz, lange Handschuhe, Lederstiefel, keine nackten Arme.',
  'disposal.caution.wax vapour burns':
    'Über 175 °C können die Dämpfe Feuer fangen. Zwei Thermometer, eine Heizung, die sofort abzustellen ist, und nie allein lassen.',
  'disposal.caution.wet wood boils over':
    'Nasses oder schmutziges Holz lässt heißes Wachs überkochen: gründlich abgekratzt, trocken, langsam eintauchen, den Kessel nicht voll füllen.',
  'disposal.caution.lid, never water': 'Brennt das Wachs: Deckel darauf und Heizung aus. Niemals Wasser.',
  'disposal.caution.hot wax is not kerosene':
    'Gemeint ist festes Paraffinwachs. In manchen Ländern heißt Petroleum „paraffin“: niemals das.',
  'disposal.caution.log time and temperature':
    'Zeit und Temperatur jedes Tauchgangs aufschreiben; ohne beides weiß niemand, was die Hitze bewirkt hat.',
  'disposal.caution.eyes, gloves, boots, air':
    'Augenschutz, feste wasserdichte Handschuhe, Stiefel, frische Luft, eine zweite Person, sauberes Wasser zum Spülen.',
  'disposal.caution.never mix with acid':
    'Bleichlauge nie mit Säure, Ammoniak oder anderen Reinigern mischen: Es entsteht giftiges Gas.',
  'disposal.caution.caustic into water':
    'Ätznatron in kaltes Wasser geben, immer nur wenig, nie Wasser auf das Ätznatron: Es kocht und spritzt.',
  'disposal.caution.heat caustic slowly':
    'Das Bad langsam erhitzen, oben Platz lassen, die Teile sachte eintauchen: Heiße Lauge kocht über, und ein Spritzer verätzt Augen und Haut.',
  'disposal.caution.no aluminium or zinc':
    'Nichts aus Aluminium oder Zink ins Bad, auch kein solches Gefäß: Es entsteht brennbares Gas.',
  'disposal.caution.caustic cleans only':
    'Natronlauge reinigt. Allein macht sie Gerät nicht sporenfrei, und sie beweist nichts.',
  'disposal.caution.lift by two': 'Volle Zargen zu zweit heben; ein verpacktes Stück wiegt höchstens 25 kg.',
  'disposal.caution.dose from the certificate':
    'Es zählt die kleinste erreichte Dosis laut Bescheinigung des Betreibers, nicht die bestellte.',
} as const;
