<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Record</name>
    <message>
        <source>Those of the recheck are readings-recheck.csv.</source>
        <translation>Die der Nachmessung stehen in readings-recheck.csv.</translation>
    </message>
    <message>
        <source>Where this record comes from</source>
        <translation>Woher dieser Bericht kommt</translation>
    </message>
    <message>
        <source>Read again on %1: %2 of the measures. Of these %3 are where they should be.</source>
        <translation>Nachgemessen am %1: %2 der Maße. Davon sind %3 da, wo sie sein sollen.</translation>
    </message>
    <message>
        <source>Inside, but too close to a limit to be called in by the rule used: %1.</source>
        <translation>Innerhalb, aber zu knapp an einer Grenze, um nach der Regel als innerhalb zu gelten: %1.</translation>
    </message>
    <message>
        <source>Workshop: %1.</source>
        <translation>Werkstatt: %1.</translation>
    </message>
    <message>
        <source>Keys are named with their octave: C4 is middle C, A#4 the black key right above A4.</source>
        <translation>Tasten heißen international: C4 ist das eingestrichene C, B das deutsche H, A# das deutsche B; die Ziffer nennt die Oktave.</translation>
    </message>
    <message>
        <source>Looked through and signed by %1 on %2.</source>
        <translation>Durchgesehen und abgezeichnet von %1 am %2.</translation>
    </message>
    <message>
        <source>Remark: %1</source>
        <translation>Bemerkung: %1</translation>
    </message>
    <message>
        <source>Remark on the readings of %1: %2</source>
        <translation>Bemerkung zu den Messwerten vom %1: %2</translation>
    </message>
    <message>
        <source>Remarks on single readings</source>
        <translation>Bemerkungen zu einzelnen Messwerten</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>� stands for a letter that the type of this document does not have. The files inside it hold what was typed.</source>
        <translation>� steht für ein Zeichen, das die Schrift dieses Dokuments nicht hat. Die Dateien darin enthalten, was getippt wurde.</translation>
    </message>
    <message>
        <source>%1: uncertainty %2 (k = 2), from the gauge study of “%3”, %4.</source>
        <translation>%1: Unsicherheit %2 (k = 2), aus der Messmittelstudie von „%3“, %4.</translation>
    </message>
    <message>
        <source>How finely they were read off makes up %1 % of that doubt (of its variance, the median of the readings); the rest is gauge and people.</source>
        <translation>Wie fein sie abgelesen sind, macht %1 % dieses Messzweifels aus (seiner Varianz, Median der Messwerte); das Übrige sind Messmittel und Personen.</translation>
    </message>
    <message>
        <source>Neither the gauge nor the set states an uncertainty, so that only how finely the readings were read off is counted.</source>
        <translation>Weder das Messmittel noch der Satz gibt eine Unsicherheit an, sodass nur zählt, wie fein die Messwerte abgelesen sind.</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Ausnahmen</translation>
    </message>
    <message>
        <source>Every reading</source>
        <translation>Jeder Messwert</translation>
    </message>
    <message>
        <source>renewed</source>
        <translation>erneuert</translation>
    </message>
    <message>
        <source>repinned</source>
        <translation>neu geachst</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>gereinigt</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>neu belegt</translation>
    </message>
    <message>
        <source>refinished</source>
        <translation>Oberfläche neu</translation>
    </message>
    <message>
        <source>replated</source>
        <translation>neu vernickelt</translation>
    </message>
    <message>
        <source>pedal trapwork</source>
        <translation>Pedalmechanik</translation>
    </message>
    <message>
        <source>restrung</source>
        <translation>neu besaitet</translation>
    </message>
    <message>
        <source>repaired</source>
        <translation>repariert</translation>
    </message>
    <message>
        <source>found altered</source>
        <translation>verändert vorgefunden</translation>
    </message>
    <message>
        <source>other work</source>
        <translation>andere Arbeit</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Gehäuse</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Mechanik</translation>
    </message>
    <message>
        <source>Pedals</source>
        <translation>Pedale</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>Pin block</source>
        <translation>Stimmstock</translation>
    </message>
    <message>
        <source>Soundboard</source>
        <translation>Resonanzboden</translation>
    </message>
    <message>
        <source>unserviceable</source>
        <translation>unbrauchbar</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>serviceable</source>
        <translation>brauchbar</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>as new</source>
        <translation>wie neu</translation>
    </message>
    <message>
        <source>As received</source>
        <translation>Bei Annahme</translation>
    </message>
    <message>
        <source>As it leaves</source>
        <translation>Bei Abgabe</translation>
    </message>
    <message>
        <source>whole instrument</source>
        <translation>ganzes Instrument</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>out</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>close</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>ungleich</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>what it means</source>
        <translation>was das heißt</translation>
    </message>
    <message>
        <source>Accepted as it is</source>
        <translation>So angenommen</translation>
    </message>
    <message>
        <source>Promised by the tolerance set and not measured</source>
        <translation>Im Toleranzsatz zugesagt und nicht gemessen</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Töne</translation>
    </message>
    <message>
        <source>Felt and not measured</source>
        <translation>Gespürt, nicht gemessen</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Accepted as they are</source>
        <translation>So angenommen</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>by whom, when</source>
        <translation>von wem, wann</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>There are none: every measure that the tolerance set names was read, lies inside its limits and is even with its neighbours.</source>
        <translation>Es gibt keine: Jedes Maß, das der Toleranzsatz nennt, wurde gemessen, liegt in seinen Grenzen und ist gleichmäßig mit seinen Nachbarn.</translation>
    </message>
    <message>
        <source>Out of limits, close to a limit, or uneven, worst first: ordered by the distance from target in units of half the width between the limits.</source>
        <translation>Außerhalb der Grenzen, knapp an einer Grenze oder ungleich, das Schlimmste zuerst: geordnet nach dem Abstand vom Sollwert, gemessen in halben Breiten zwischen den Grenzen.</translation>
    </message>
    <message>
        <source>Regulation record</source>
        <translation>Regulierungsbericht</translation>
    </message>
    <message>
        <source>measures that this workshop promises are where they should be, as measured on %1.</source>
        <translation>Maße, die diese Werkstatt zusagt, sind da, wo sie sein sollen, gemessen am %1.</translation>
    </message>
    <message>
        <source>When the instrument came in, %1 of %2 were.</source>
        <translation>Als das Instrument kam, waren es %1 von %2.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Each key carries a small gauge with its worst measure on it: inside the grey field it is where it should be; above or below the field it is too large or too small. A broken outline was not measured. A small step at a key's edge: the key differs much from its neighbour.</source>
        <translation>Jede Taste trägt eine kleine Anzeige mit ihrem schlechtesten Maß: Im grauen Feld ist es da, wo es sein soll; über oder unter dem Feld ist es zu groß oder zu klein. Ein gestrichelter Umriss wurde nicht gemessen. Eine kleine Stufe am Rand: Die Taste weicht stark von ihrer Nachbarin ab.</translation>
    </message>
    <message>
        <source> The work was not finished when these readings were taken.</source>
        <translation> Die Arbeit war bei diesen Messungen noch nicht fertig.</translation>
    </message>
    <message>
        <source> These readings show the instrument as it came; no work on it is recorded.</source>
        <translation> Diese Messwerte zeigen das Instrument, wie es kam; eine Arbeit daran ist nicht verzeichnet.</translation>
    </message>
    <message>
        <source>The action was measured key by key (%1 readings).</source>
        <translation>Die Mechanik wurde Taste für Taste gemessen (%1 Messwerte).</translation>
    </message>
    <message>
        <source>The action was measured key by key (%1 readings). How it was before is not recorded.</source>
        <translation>Die Mechanik wurde Taste für Taste gemessen (%1 Messwerte). Wie sie vorher war, ist nicht verzeichnet.</translation>
    </message>
    <message>
        <source>The action was measured key by key as it came (%1 readings), set, and measured again (%2 readings). %3 measures that were outside their limits came inside.</source>
        <translation>Die Mechanik wurde Taste für Taste gemessen, wie sie kam (%1 Messwerte), reguliert und wieder gemessen (%2 Messwerte). %3 Maße, die außerhalb lagen, kamen in ihre Grenzen.</translation>
    </message>
    <message>
        <source>Renewed: %1.</source>
        <translation>Erneuert: %1.</translation>
    </message>
    <message>
        <source>Parts of it are not as its maker built them: see what was done.</source>
        <translation>Manches daran ist nicht mehr, wie der Hersteller es gebaut hat: siehe, was getan wurde.</translation>
    </message>
    <message>
        <source>What a player feels</source>
        <translation>Was man beim Spielen merkt</translation>
    </message>
    <message>
        <source>keys out before</source>
        <translation>außen vorher</translation>
    </message>
    <message>
        <source>keys out now</source>
        <translation>außen jetzt</translation>
    </message>
    <message>
        <source>Nothing that was promised is outside its limits or unmeasured.</source>
        <translation>Nichts Zugesagtes liegt außerhalb seiner Grenzen oder ist ungemessen.</translation>
    </message>
    <message>
        <source>Outside their limits: %1. Promised and not measured: %2. Page %3 names each of them.</source>
        <translation>Außerhalb der Grenzen: %1. Zugesagt und nicht gemessen: %2. Seite %3 nennt sie.</translation>
    </message>
    <message>
        <source>This record speaks of the day on which the instrument was measured. It is no promise of how long that lasts. The pages that follow are for your technician: limits and their sources, charts, every reading, and how it was measured.</source>
        <translation>Dieser Bericht spricht von dem Tag, an dem gemessen wurde. Er verspricht nicht, wie lange das so bleibt. Die folgenden Seiten sind für Fachleute: Grenzen und ihre Quellen, Schaubilder, jeder Messwert, und wie gemessen wurde.</translation>
    </message>
    <message>
        <source>Revision %1. It takes the place of revision %2, issued on %3.</source>
        <translation>Fassung %1. Sie ersetzt Fassung %2, ausgestellt am %3.</translation>
    </message>
    <message>
        <source>Sealed by %1. Fingerprint of the certificate (SHA-256):
%2</source>
        <translation>Gesiegelt von %1. Fingerabdruck des Zertifikats (SHA-256):
%2</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 % relative humidity</source>
        <translation>%1 % relative Luftfeuchte</translation>
    </message>
    <message>
        <source>began</source>
        <translation>begonnen</translation>
    </message>
    <message>
        <source>measured by</source>
        <translation>gemessen von</translation>
    </message>
    <message>
        <source>climate</source>
        <translation>Raumklima</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>resolution of the gauge</source>
        <translation>Auflösung des Messmittels</translation>
    </message>
    <message>
        <source>its expanded uncertainty, k = 2</source>
        <translation>erweiterte Unsicherheit, k = 2</translation>
    </message>
    <message>
        <source>dip measured at</source>
        <translation>Tiefgang gemessen</translation>
    </message>
    <message>
        <source>drop measured</source>
        <translation>Abnicken gemessen</translation>
    </message>
    <message>
        <source>readings, takes counted</source>
        <translation>Messwerte mit Wiederholungen</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>sections</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <source>The instrument as received</source>
        <translation>Das Instrument bei Annahme</translation>
    </message>
    <message>
        <source>what stands there</source>
        <translation>was dort steht</translation>
    </message>
    <message>
        <source>stringing</source>
        <translation>Besaitung</translation>
    </message>
    <message>
        <source>dampers</source>
        <translation>Dämpfer</translation>
    </message>
    <message>
        <source>What each measure is</source>
        <translation>Was jedes Maß ist</translation>
    </message>
    <message>
        <source>how it is measured</source>
        <translation>wie es gemessen wird</translation>
    </message>
    <message>
        <source>What was not measured</source>
        <translation>Was nicht gemessen wurde</translation>
    </message>
    <message>
        <source>On no note: %1.</source>
        <translation>An keinem Ton: %1.</translation>
    </message>
    <message>
        <source>Single notes that were promised and not read are listed under “%1”.</source>
        <translation>Einzelne Töne, die zugesagt und nicht gemessen wurden, stehen unter „%1“.</translation>
    </message>
    <message>
        <source>This record is about the regulation of the action. It says nothing of tuning, tone, strings, soundboard, pin block, case or value.</source>
        <translation>Dieser Bericht handelt von der Regulierung der Mechanik. Er sagt nichts über Stimmung, Klang, Saiten, Resonanzboden, Stimmstock, Gehäuse oder Wert.</translation>
    </message>
    <message>
        <source>Signed by %1 on %2 (revision %3 of the pass).</source>
        <translation>Abgezeichnet von %1 am %2 (Fassung %3 des Durchgangs).</translation>
    </message>
    <message>
        <source>Nobody has signed the newest pass in the logbook.</source>
        <translation>Niemand hat den neuesten Durchgang im Logbuch abgezeichnet.</translation>
    </message>
    <message>
        <source>This is revision %1 of the record. It takes the place of revision %2, issued on %3, whose file has the digest (SHA-256)
%4</source>
        <translation>Dies ist Fassung %1 des Berichts. Sie ersetzt Fassung %2, ausgestellt am %3, deren Datei die Prüfsumme (SHA-256) hat:
%4</translation>
    </message>
    <message>
        <source>Buyer: %1</source>
        <translation>Käufer: %1</translation>
    </message>
    <message>
        <source>Price: %1</source>
        <translation>Preis: %1</translation>
    </message>
    <message>
        <source>Of the sale: %1</source>
        <translation>Zum Verkauf: %1</translation>
    </message>
    <message>
        <source>What this record is</source>
        <translation>Was dieser Bericht ist</translation>
    </message>
    <message>
        <source> (%1) and readings-as-found.csv</source>
        <translation> (%1) und readings-as-found.csv (bei Annahme)</translation>
    </message>
    <message>
        <source>The logbook that this record was made from stood at entry %1 of its history, whose digest (SHA-256) is
%2
Whoever keeps the logbook can be asked to show that it still holds this entry.</source>
        <translation>Das Logbuch, aus dem dieser Bericht stammt, stand bei Eintrag %1 seiner Geschichte, dessen Prüfsumme (SHA-256) lautet:
%2
Wer das Logbuch führt, kann gebeten werden zu zeigen, dass es diesen Eintrag noch enthält.</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Wie gemessen wurde</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>These are the usual cautions of the trade and no legal advice. The law of your country, local rules and licensed practice come before them.</source>
        <translation>Dies sind die üblichen Vorsichtsregeln des Handwerks und keine Rechtsberatung. Das Recht Ihres Landes, örtliche Vorschriften und zugelassene Fachbetriebe gehen ihnen vor.</translation>
    </message>
    <message>
        <source>found</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>again</source>
        <translation>erneut</translation>
    </message>
    <message>
        <source>left</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>▲ out, above the upper limit · ▼ out, below the lower limit · ~ inside, but close to a limit · u uneven with its lower neighbour · * mean of more than one take · missing: promised and not read. A thin line marks a section break. Every take stands in the files inside this document.</source>
        <translation>▲ außerhalb, über der oberen Grenze · ▼ außerhalb, unter der unteren Grenze · ~ innerhalb, aber knapp an einer Grenze · u ungleich mit dem tieferen Nachbarn · * Mittel mehrerer Messungen · fehlt: zugesagt und nicht gemessen. Eine dünne Linie trennt Lagen. Tonnamen in internationaler Schreibweise: B ist das deutsche H, A# das deutsche B. Jede Messung steht in den Dateien in diesem Dokument.</translation>
    </message>
    <message>
        <source>%1 cm long</source>
        <translation>%1 cm lang</translation>
    </message>
    <message>
        <source>%1 cm high</source>
        <translation>%1 cm hoch</translation>
    </message>
    <message>
        <source>The keys lie level</source>
        <translation>Die Tasten liegen in einer Ebene</translation>
    </message>
    <message>
        <source>The hammers wait at the right distance from the strings</source>
        <translation>Die Hämmer warten im richtigen Abstand von den Saiten</translation>
    </message>
    <message>
        <source>The key takes hold of the hammer without slack</source>
        <translation>Die Taste nimmt den Hammer ohne Leerlauf mit</translation>
    </message>
    <message>
        <source>The hammer is let go close to the string, for soft playing</source>
        <translation>Der Hammer wird nah an der Saite freigegeben, für leises Spiel</translation>
    </message>
    <message>
        <source>The hammer sinks back a little once it is let go</source>
        <translation>Der Hammer sinkt nach der Freigabe ein wenig zurück</translation>
    </message>
    <message>
        <source>The keys go down equally deep</source>
        <translation>Die Tasten gehen gleich tief</translation>
    </message>
    <message>
        <source>The end of the key's way feels alike</source>
        <translation>Das Ende des Tastenwegs fühlt sich gleich an</translation>
    </message>
    <message>
        <source>The hammer is caught after its blow, for fast repeats</source>
        <translation>Der Hammer wird gefangen, für schnelle Wiederholung</translation>
    </message>
    <message>
        <source>The dampers lift at the right moment</source>
        <translation>Die Dämpfer heben im richtigen Augenblick</translation>
    </message>
    <message>
        <source>The keys ask for a like weight of hand</source>
        <translation>Die Tasten verlangen ein gleiches Gewicht der Hand</translation>
    </message>
    <message>
        <source>The keys come back with a like strength</source>
        <translation>Die Tasten kommen mit gleicher Kraft zurück</translation>
    </message>
    <message>
        <source>Grand piano</source>
        <translation>Flügel</translation>
    </message>
    <message>
        <source>Upright piano</source>
        <translation>Klavier</translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>built %1</source>
        <translation>gebaut %1</translation>
    </message>
    <message>
        <source>%1 notes, %2</source>
        <translation>%1 Töne, %2</translation>
    </message>
    <message>
        <source>Strings. The strings of a piano pull with many tonnes together. A string or a pin that lets go can hurt badly. Leave strings, pins and frame to a trained technician.</source>
        <translation>Saiten. Die Saiten eines Klaviers ziehen zusammen mit vielen Tonnen. Eine Saite oder ein Wirbel, der nachgibt, kann schwer verletzen. Saiten, Wirbel und Rahmen gehören in geschulte Hände.</translation>
    </message>
    <message>
        <source>Tipping. A tall upright is heavy at its back and can fall over backwards. Nobody stands behind it while it is moved; have it moved by people who do this for a living, and keep it on level floor.</source>
        <translation>Kippen. Ein hohes Klavier ist hinten schwer und kann nach hinten umfallen. Niemand steht dahinter, während es bewegt wird; lassen Sie es von Leuten bewegen, die das beruflich tun, und stellen Sie es auf ebenen Boden.</translation>
    </message>
    <message>
        <source>Lead. The keys of this instrument may hold lead weights, and old lead sheds a pale dust. Keep children from it, wipe moist rather than brush, wash hands. Local rules on lead come first.</source>
        <translation>Blei. Die Tasten dieses Instruments können Bleigewichte enthalten, und altes Blei gibt einen hellen Staub ab. Halten Sie Kinder davon fern, wischen Sie feucht statt zu bürsten, waschen Sie die Hände. Örtliche Vorschriften über Blei gehen vor.</translation>
    </message>
    <message>
        <source>Ivory. The keys of this instrument may be covered with ivory; this record does not say whether they are. Many countries restrict its sale, hire or carriage across a border: ask the law of your country before you sell, lend or move the instrument.</source>
        <translation>Elfenbein. Die Tasten dieses Instruments können mit Elfenbein belegt sein; ob sie es sind, sagt dieser Bericht nicht. Viele Länder beschränken Verkauf, Vermietung oder Beförderung über eine Grenze: Fragen Sie nach dem Recht Ihres Landes, bevor Sie das Instrument verkaufen, verleihen oder befördern.</translation>
    </message>
    <message>
        <source>Dust. Old pianos hold dust that may carry moth poison, mould or old finish. Have it cleaned with suction and a mask by somebody who knows it; local rules come first.</source>
        <translation>Staub. In alten Klavieren liegt Staub, der Mottengift, Schimmel oder alten Lack enthalten kann. Lassen Sie ihn mit Absaugung und Maske von jemandem entfernen, der sich auskennt; örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Climate. Wood and felt move with the seasons, and the distances in this record with them. A steady room, neither dry nor damp, keeps the instrument closest to the state written here.</source>
        <translation>Klima. Holz und Filz bewegen sich mit den Jahreszeiten und mit ihnen die Abstände in diesem Bericht. Ein gleichmäßiger Raum, weder trocken noch feucht, hält das Instrument am nächsten an dem Zustand, der hier steht.</translation>
    </message>
    <message>
        <source>Guarded: a value counts as in only where it lies inside its limits by at least the expanded uncertainty W. Nearer to a limit than that, it is called close to the limit; beyond the limit, out.</source>
        <translation>Mit Schutzabstand: Ein Wert gilt nur dann als innerhalb, wenn er um mindestens die erweiterte Unsicherheit W in seinen Grenzen liegt. Näher an einer Grenze heißt er knapp; jenseits der Grenze außerhalb.</translation>
    </message>
    <message>
        <source>Simple: a value counts as in where it lies inside its limits or on one of them, and as out beyond. Close to a limit, the uncertainty of the gauge may put the true value on the other side; buyer and shop share that risk.</source>
        <translation>Einfach: Ein Wert gilt als innerhalb, wenn er in seinen Grenzen oder auf einer liegt, und jenseits als außerhalb. Nah an einer Grenze kann der wahre Wert wegen der Unsicherheit des Messmittels auf der anderen Seite liegen; dieses Risiko teilen Käufer und Werkstatt.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>notes
read</source>
        <translation>Töne
gelesen</translation>
    </message>
    <message>
        <source>not
read</source>
        <translation>nicht
gelesen</translation>
    </message>
    <message>
        <source>close to
a limit</source>
        <translation>knapp an
Grenze</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>standard
deviation</source>
        <translation>Standard-
abweichung</translation>
    </message>
    <message>
        <source>What changed, over the notes read in both passes</source>
        <translation>Was sich änderte, an Tönen mit beiden Messungen</translation>
    </message>
    <message>
        <source>mean change</source>
        <translation>mittlere Änd.</translation>
    </message>
    <message>
        <source>95 % of the mean change</source>
        <translation>95 % der mittleren Änderung</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>verdorben</translation>
    </message>
    <message>
        <source>Mended: out before and no longer out. Spoiled: the reverse. The interval is that of a paired comparison (Student, two-sided).</source>
        <translation>Behoben: vorher außerhalb, jetzt nicht mehr. Verdorben: umgekehrt. Der Bereich ist der eines gepaarten Vergleichs (Student, zweiseitig).</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>The state in figures</source>
        <translation>Der Zustand in Zahlen</translation>
    </message>
    <message>
        <source>Along the keyboard</source>
        <translation>Entlang der Klaviatur</translation>
    </message>
    <message>
        <source>as the set</source>
        <translation>wie der Satz</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>ohne Quelle</translation>
    </message>
    <message>
        <source>keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>at note</source>
        <translation>beim Ton</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>kleinster</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>größter</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>naturals</source>
        <translation>weiße</translation>
    </message>
    <message>
        <source>sharps</source>
        <translation>schwarze</translation>
    </message>
    <message>
        <source>Between two notes named here the values lie on a straight line by note number; beyond the outermost they stay.</source>
        <translation>Zwischen zwei hier genannten Tönen liegen die Werte auf einer Geraden über der Tonnummer; jenseits der äußersten bleiben sie gleich.</translation>
    </message>
    <message>
        <source>not counted in</source>
        <translation>nicht eingerechnet</translation>
    </message>
    <message>
        <source>%1, k = %2</source>
        <translation>%1, k = %2</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Entscheidungsregel</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>expanded uncertainty W</source>
        <translation>erweiterte Unsicherheit W</translation>
    </message>
    <message>
        <source>largest step that is even</source>
        <translation>größte Stufe, die noch gleichmäßig ist</translation>
    </message>
    <message>
        <source>A step is the difference from the nearest lower note that was read, at most four notes below, of the same colour where keys are compared, and not across a section break.</source>
        <translation>Eine Stufe ist der Unterschied zum nächsttieferen gemessenen Ton, höchstens vier Töne darunter, von gleicher Farbe, wo Tasten verglichen werden, und nicht über eine Lagengrenze hinweg.</translation>
    </message>
    <message>
        <source>What was promised</source>
        <translation>Was zugesagt war</translation>
    </message>
    <message>
        <source>Tolerance set: %1.</source>
        <translation>Toleranzsatz: %1.</translation>
    </message>
    <message>
        <source>The set names no source.</source>
        <translation>Der Satz nennt keine Quelle.</translation>
    </message>
    <message>
        <source>Source of the set: %1</source>
        <translation>Quelle des Satzes: %1</translation>
    </message>
    <message>
        <source>Where the maker's manual gives other values, the manual outranks these.</source>
        <translation>Wo das Handbuch des Herstellers andere Werte nennt, geht das Handbuch vor.</translation>
    </message>
    <message>
        <source>The log of work holds no entry.</source>
        <translation>Das Arbeitsbuch enthält keinen Eintrag.</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>material, remark</source>
        <translation>Material, Bemerkung</translation>
    </message>
    <message>
        <source>by whom, time</source>
        <translation>von wem, Zeit</translation>
    </message>
    <message>
        <source>Departures from the original build</source>
        <translation>Abweichungen von der ursprünglichen Bauart</translation>
    </message>
    <message>
        <source>None is recorded.</source>
        <translation>Keine ist verzeichnet.</translation>
    </message>
    <message>
        <source>%1 (%2 of 5)</source>
        <translation>%1 (%2 von 5)</translation>
    </message>
    <message>
        <source>Condition by area</source>
        <translation>Zustand nach Bereichen</translation>
    </message>
    <message>
        <source>By the workshop's eye on the day, on five steps from unserviceable (1) to as new (5).</source>
        <translation>Nach dem Augenschein der Werkstatt am Tag, in fünf Stufen von unbrauchbar (1) bis wie neu (5).</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotografien</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Regulation record: %1</source>
        <translation>Regulierungsbericht: %1</translation>
    </message>
    <message>
        <source>Issued %1</source>
        <translation>Ausgestellt am %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>no change told apart</source>
        <translation>keine erkennbare Änderung</translation>
    </message>
    <message>
        <source>has become smaller</source>
        <translation>ist kleiner geworden</translation>
    </message>
    <message>
        <source>has become larger</source>
        <translation>ist größer geworden</translation>
    </message>
    <message>
        <source>doubt of the gauge not known</source>
        <translation>Messzweifel nicht bekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>told apart
from</source>
        <translation>unter-
scheidbar ab</translation>
    </message>
    <message>
        <source>notes
moved</source>
        <translation>Töne
bewegt</translation>
    </message>
    <message>
        <source>most</source>
        <translation>am meisten</translation>
    </message>
    <message>
        <source>which way</source>
        <translation>in welche Richtung</translation>
    </message>
    <message>
        <source>What moved since it was left</source>
        <translation>Was sich seit der Abgabe verändert hat</translation>
    </message>
    <message>
        <source>Climate on both days. %1 %2</source>
        <translation>Klima an beiden Tagen. %1 %2</translation>
    </message>
    <message>
        <source>No note was read on both days.</source>
        <translation>Kein Ton wurde an beiden Tagen gemessen.</translation>
    </message>
    <message>
        <source>A change is told apart from none where it is larger than the expanded uncertainty (k = 2) of a difference of two readings, which stands under “told apart from”. The mean of many notes is held against the same figure: what a gauge has wrong, it has wrong on every note alike.</source>
        <translation>Eine Änderung gilt als erkannt, wo sie größer ist als die erweiterte Messunsicherheit (k = 2) einer Differenz zweier Messwerte; diese steht unter „unterscheidbar ab“. Das Mittel vieler Töne wird an derselben Größe gemessen: Was ein Messmittel falsch zeigt, zeigt es auf jedem Ton gleich falsch.</translation>
    </message>
    <message>
        <source>No reading that is inside its limits lies so near to one that the doubt of the measuring could put it outside.</source>
        <translation>Kein Messwert, der innerhalb seiner Grenzen liegt, liegt so nahe an einer, dass der Messzweifel ihn nach außen bringen könnte.</translation>
    </message>
    <message>
        <source>Readings that are inside their limits, but nearer to one than the doubt of the measuring (gauge, people, reading off): %1.</source>
        <translation>Messwerte, die innerhalb ihrer Grenzen liegen, einer Grenze aber näher sind als der Messzweifel (Messmittel, Personen, Ablesung): %1.</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Looked at and accepted as they are, with the reason: %1.</source>
        <translation>Angesehen und mit Begründung so angenommen: %1.</translation>
    </message>
    <message>
        <source>notes and values</source>
        <translation>Töne und Werte</translation>
    </message>
    <message>
        <source>read
again</source>
        <translation>erneut
gemessen</translation>
    </message>
    <message>
        <source>out of
limits</source>
        <translation>außer-
halb</translation>
    </message>
    <message>
        <source>at most out
of all</source>
        <translation>höchstens außen
von allen</translation>
    </message>
    <message>
        <source>mean
difference</source>
        <translation>mittlerer
Unterschied</translation>
    </message>
    <message>
        <source>19 of 20 differences</source>
        <translation>19 von 20 Unterschieden</translation>
    </message>
    <message>
        <source>Read again by a second person</source>
        <translation>Von einer zweiten Person nachgemessen</translation>
    </message>
    <message>
        <source>%1 read %2 notes again on %3, drawn at random (seed %4): %5.</source>
        <translation>%1 hat %2 ausgeloste Töne (Startzahl %4) am %3 erneut gemessen: %5.</translation>
    </message>
    <message>
        <source>“At most out of all” holds with 95 % confidence for all notes that were read and are judged, and is worked out from the sample alone (hypergeometric). Differences are second reading less first; the range is their mean ± 1.96 standard deviations.</source>
        <translation>„Höchstens außen von allen“ gilt mit 95 % Sicherheit für alle gemessenen und beurteilten Töne und folgt allein aus der Stichprobe (hypergeometrisch). Unterschied heißt zweiter Messwert minus erster; der Bereich ist ihr Mittel ± 1,96 Standardabweichungen.</translation>
    </message>
    <message>
        <source>Owner: %1</source>
        <translation>Eigentümer: %1</translation>
    </message>
    <message>
        <source>Name and place of the workshop are not stated.</source>
        <translation>Name und Ort der Werkstatt sind nicht angegeben.</translation>
    </message>
    <message>
        <source>Workshop: %1. It was measured there, unless a remark on the readings names another place.</source>
        <translation>Werkstatt: %1. Dort wurde gemessen, wenn keine Bemerkung zu den Messwerten einen anderen Ort nennt.</translation>
    </message>
    <message>
        <source>The workshop answers for the readings and for what it did. Maker, serial number, year and history are as they were read off the instrument or told by its owner. Of the gauges this record states what the workshop states of them; it claims no calibration of theirs. It counts as a whole: a page on its own is no record.</source>
        <translation>Die Werkstatt steht für die Messwerte ein und für das, was sie getan hat. Hersteller, Seriennummer, Baujahr und Vorgeschichte sind so angegeben, wie sie am Instrument zu lesen waren oder der Eigentümer sie genannt hat. Von den Messmitteln sagt dieser Bericht, was die Werkstatt von ihnen angibt; eine Kalibrierung behauptet er nicht. Er gilt nur als Ganzes: Eine einzelne Seite ist kein Bericht.</translation>
    </message>
    <message>
        <source>Accepted on %1</source>
        <translation>Angenommen am %1</translation>
    </message>
    <message>
        <source>Accepted in an earlier pass and not mended since</source>
        <translation>In einem früheren Durchgang angenommen und seither nicht behoben</translation>
    </message>
    <message>
        <source>in which pass, by whom, when</source>
        <translation>in welchem Durchgang, von wem, wann</translation>
    </message>
    <message>
        <source>Each value is the one that was accepted; the arrow leads to the newest reading since, where there is one.</source>
        <translation>Jeder Wert ist der angenommene; der Pfeil führt zum neuesten Messwert seither, wo es einen gibt.</translation>
    </message>
    <message>
        <source>mended since</source>
        <translation>seither behoben</translation>
    </message>
    <message>
        <source>accepted again in a later pass</source>
        <translation>in einem späteren Durchgang wieder angenommen</translation>
    </message>
    <message>
        <source>Accepted in an earlier pass and settled since</source>
        <translation>In einem früheren Durchgang angenommen und seither erledigt</translation>
    </message>
    <message>
        <source>since then</source>
        <translation>seither</translation>
    </message>
    <message>
        <source>Looked at and accepted, with the reason: %1, of these %2 in an earlier pass.</source>
        <translation>Angesehen und mit Begründung angenommen: %1, davon %2 in einem früheren Durchgang.</translation>
    </message>
    <message>
        <source>%1 It speaks of the instrument on the day it was measured and of no other day. The readings stand inside this document as files: record.json and readings.csv%2.</source>
        <translation>%1 Er spricht vom Instrument an dem Tag, an dem es gemessen wurde, und von keinem anderen. Die Messwerte stehen als Dateien in diesem Dokument: record.json und readings.csv%2.</translation>
    </message>
    <message>
        <source>Issued on %1 with Hammerline %2; by whom is not stated.</source>
        <translation>Ausgestellt am %1 mit Hammerline %2; von wem, ist nicht angegeben.</translation>
    </message>
    <message>
        <source>Issued on %1 by %2 with Hammerline %3.</source>
        <translation>Ausgestellt am %1 von %2 mit Hammerline %3.</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>Renewed: %1 and more.</source>
        <translation>Erneuert: %1 und mehr.</translation>
    </message>
    <message>
        <source>number %1</source>
        <translation>Nummer %1</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>%1; changed by %2</source>
        <translation>%1; um %2 verändert</translation>
    </message>
    <message>
        <source>The one note read is not out</source>
        <translation>Der eine gemessene Ton liegt nicht außerhalb</translation>
    </message>
    <message>
        <source>The one note read is out: too large</source>
        <translation>Der eine gemessene Ton liegt außerhalb: zu groß</translation>
    </message>
    <message>
        <source>The one note read is out: too small</source>
        <translation>Der eine gemessene Ton liegt außerhalb: zu klein</translation>
    </message>
    <message>
        <source>1 of %1 notes read is out: too large</source>
        <translation>1 von %1 gemessenen Tönen liegt außerhalb: zu groß</translation>
    </message>
    <message>
        <source>1 of %1 notes read is out: too small</source>
        <translation>1 von %1 gemessenen Tönen liegt außerhalb: zu klein</translation>
    </message>
    <message>
        <source>None of %1 notes read is out</source>
        <translation>Keiner von %1 gemessenen Tönen liegt außerhalb</translation>
    </message>
    <message>
        <source>%1 of %2 notes read are out: %3 too large, %4 too small</source>
        <translation>%1 von %2 gemessenen Tönen liegen außerhalb: %3 zu groß, %4 zu klein</translation>
    </message>
    <message>
        <source>; %1 close to a limit</source>
        <translation>; %1 knapp an einer Grenze</translation>
    </message>
    <message>
        <source>How far from its target is %1?</source>
        <translation>Wie weit vom Sollwert ist: %1?</translation>
    </message>
    <message>
        <source>How widely is %1 spread?</source>
        <translation>Wie breit streut: %1?</translation>
    </message>
    <message>
        <source>Where along the keyboard is %1 outside its limits?</source>
        <translation>%1: Wo auf der Klaviatur außerhalb der Grenzen?</translation>
    </message>
    <message>
        <source>How does %1 run along the keyboard?</source>
        <translation>%1: Verlauf entlang der Klaviatur</translation>
    </message>
    <message>
        <source>Nothing read yet</source>
        <translation>Noch nichts gemessen</translation>
    </message>
    <message>
        <source>Notes read: %1, none judged</source>
        <translation>Gemessene Töne: %1, keiner beurteilt</translation>
    </message>
    <message>
        <source>; %1 not read</source>
        <translation>; %1 nicht gemessen</translation>
    </message>
    <message>
        <source>The chart could not be written to %1: %2. Nothing was changed there; choose another folder or make room and try again.</source>
        <translation>Das Schaubild konnte nicht nach %1 geschrieben werden: %2. Dort wurde nichts geändert; wählen Sie einen anderen Ordner oder schaffen Sie Platz.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>%1, within</source>
        <translation>%1, innerhalb</translation>
    </message>
    <message>
        <source>close to a limit</source>
        <translation>knapp an einer Grenze</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>limits and target of naturals</source>
        <translation>Grenzen und Sollwert, weiße</translation>
    </message>
    <message>
        <source>limits and target</source>
        <translation>Grenzen und Sollwert</translation>
    </message>
    <message>
        <source>of sharps</source>
        <translation>schwarze</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, from target</source>
        <translation>%1, vom Sollwert</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Töne</translation>
    </message>
    <message>
        <source>inside on every note</source>
        <translation>an jedem Ton innerhalb</translation>
    </message>
</context>
<context>
    <name>keyboard_strip</name>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>close to a limit</source>
        <translation>knapp an einer Grenze</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>off the scale</source>
        <translation>jenseits der Anzeige</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>ungleich</translation>
    </message>
    <message>
        <source>concession</source>
        <translation>so angenommen</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>fault of the key</source>
        <translation>Fehler der Taste</translation>
    </message>
    <message>
        <source> Also out: %1.</source>
        <translation> Auch außerhalb: %1.</translation>
    </message>
    <message>
        <source>Worst of all quantities</source>
        <translation>Schlechtestes aller Maße</translation>
    </message>
</context>
<context>
    <name>wording</name>
    <message>
        <source>%1; out, but within the gauge&apos;s doubt</source>
        <translation>%1; außerhalb, aber innerhalb des Messzweifels</translation>
    </message>
    <message>
        <source>Key height</source>
        <translation>Tastenhöhe</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Top of the key at rest, above the key bed or the workshop's own reference line.</source>
        <translation>Oberseite der ruhenden Taste über dem Stuhlboden oder der eigenen Bezugslinie der Werkstatt.</translation>
    </message>
    <message>
        <source>Blow</source>
        <translation>Steighöhe</translation>
    </message>
    <message>
        <source>blow</source>
        <translation>Steigh.</translation>
    </message>
    <message>
        <source>From the crown of the hammer at rest to the string.</source>
        <translation>Von der Kuppe des ruhenden Hammers bis zur Saite.</translation>
    </message>
    <message>
        <source>Lost motion</source>
        <translation>Leerweg</translation>
    </message>
    <message>
        <source>lost mot.</source>
        <translation>Leerweg</translation>
    </message>
    <message>
        <source>Travel of the key at its front before the hammer moves.</source>
        <translation>Weg der Taste an der Vorderkante, bevor der Hammer sich bewegt.</translation>
    </message>
    <message>
        <source>Let-off</source>
        <translation>Auslösung</translation>
    </message>
    <message>
        <source>let-off</source>
        <translation>Auslös.</translation>
    </message>
    <message>
        <source>From the crown of the hammer to the string at the point where it escapes, key moved very slowly.</source>
        <translation>Von der Kuppe des Hammers bis zur Saite an der Stelle, wo er auslöst, Taste sehr langsam bewegt.</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Abnicken</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Abnicken</translation>
    </message>
    <message>
        <source>How far the hammer falls below the let-off point, key held down after a slow stroke.</source>
        <translation>Wie weit der Hammer unter den Auslösepunkt fällt, Taste nach langsamem Druck gehalten.</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Tiefgang</translation>
    </message>
    <message>
        <source>dip</source>
        <translation>Tiefgang</translation>
    </message>
    <message>
        <source>Travel of the key at its front edge from rest to the bottom.</source>
        <translation>Weg der Taste an der Vorderkante von der Ruhe bis zum Grund.</translation>
    </message>
    <message>
        <source>Aftertouch</source>
        <translation>Nachdruck</translation>
    </message>
    <message>
        <source>aftertch.</source>
        <translation>Nachdr.</translation>
    </message>
    <message>
        <source>Travel of the key at its front from let-off to the bottom.</source>
        <translation>Weg der Taste an der Vorderkante von der Auslösung bis zum Grund.</translation>
    </message>
    <message>
        <source>Checking</source>
        <translation>Fang</translation>
    </message>
    <message>
        <source>checking</source>
        <translation>Fang</translation>
    </message>
    <message>
        <source>From the crown of the caught hammer to the string.</source>
        <translation>Von der Kuppe des gefangenen Hammers bis zur Saite.</translation>
    </message>
    <message>
        <source>Damper start</source>
        <translation>Dämpferbeginn</translation>
    </message>
    <message>
        <source>dampers</source>
        <translation>Dämpfer</translation>
    </message>
    <message>
        <source>Travel of the hammer from rest at which the damper starts to move.</source>
        <translation>Weg des Hammers aus der Ruhe, bei dem der Dämpfer sich zu bewegen beginnt.</translation>
    </message>
    <message>
        <source>Down weight</source>
        <translation>Niedergewicht</translation>
    </message>
    <message>
        <source>down wt</source>
        <translation>Niederg.</translation>
    </message>
    <message>
        <source>Mass at the front of the key that just lowers it slowly, dampers off.</source>
        <translation>Masse an der Vorderkante, die die Taste gerade noch langsam senkt, Dämpfer abgehoben.</translation>
    </message>
    <message>
        <source>Up weight</source>
        <translation>Aufgewicht</translation>
    </message>
    <message>
        <source>up wt</source>
        <translation>Aufgew.</translation>
    </message>
    <message>
        <source>Mass at the front of the key that the key just raises, dampers off.</source>
        <translation>Masse an der Vorderkante, die die Taste gerade noch hebt, Dämpfer abgehoben.</translation>
    </message>
    <message>
        <source>Vertical</source>
        <translation>Klavier</translation>
    </message>
    <message>
        <source>Grand</source>
        <translation>Flügel</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Vorgefunden</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Beim Regulieren</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Abgegeben</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Nachmessung</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>In work</source>
        <translation>In Arbeit</translation>
    </message>
    <message>
        <source>In review</source>
        <translation>In Prüfung</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Abgezeichnet</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Geliefert</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>In den Grenzen</translation>
    </message>
    <message>
        <source>Close to a limit</source>
        <translation>Knapp an einer Grenze</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Außerhalb</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Nicht gemessen</translation>
    </message>
    <message>
        <source>Not judged</source>
        <translation>Nicht beurteilt</translation>
    </message>
    <message>
        <source>Limits as they stand</source>
        <translation>Grenzen, wie sie stehen</translation>
    </message>
    <message>
        <source>Limits drawn in by the gauge's uncertainty</source>
        <translation>Grenzen, um die Unsicherheit des Messmittels eingezogen</translation>
    </message>
    <message>
        <source>At the front edge</source>
        <translation>An der Vorderkante</translation>
    </message>
    <message>
        <source>13 mm behind the front edge</source>
        <translation>13 mm hinter der Vorderkante</translation>
    </message>
    <message>
        <source>Over the front pin</source>
        <translation>Über dem Vorderstift</translation>
    </message>
    <message>
        <source>Below the let-off point</source>
        <translation>Unter dem Auslösepunkt</translation>
    </message>
    <message>
        <source>From the string</source>
        <translation>Von der Saite</translation>
    </message>
    <message>
        <source>%1 %2; a little %3</source>
        <translation>%1 %2; etwas %3</translation>
    </message>
    <message>
        <source>%1 %2; %3</source>
        <translation>%1 %2; %3</translation>
    </message>
    <message>
        <source>On target, but the limits are too narrow for this gauge to be sure</source>
        <translation>Auf dem Sollwert, doch für dieses Messmittel sind die Grenzen zu eng, um sicher zu sein</translation>
    </message>
    <message>
        <source>On target</source>
        <translation>Auf dem Sollwert</translation>
    </message>
    <message>
        <source>%1 above target</source>
        <translation>%1 über dem Sollwert</translation>
    </message>
    <message>
        <source>%1 below target</source>
        <translation>%1 unter dem Sollwert</translation>
    </message>
    <message>
        <source>%1, in, but within the gauge&apos;s doubt</source>
        <translation>%1, innerhalb, aber im Zweifel des Messmittels</translation>
    </message>
    <message>
        <source>Doubt: %1 either way, %2 % of its variance from how finely it was read off</source>
        <translation>Zweifel: %1 nach beiden Seiten, davon %2 % der Varianz aus der Feinheit der Ablesung</translation>
    </message>
    <message>
        <source>%1; truly inside with a probability of %2.</source>
        <translation>%1; wirklich innerhalb mit einer Wahrscheinlichkeit von %2.</translation>
    </message>
    <message>
        <source>less than 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>more than 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1; too close to the limit for this gauge to be sure</source>
        <translation>%1; zu nah an der Grenze, als dass dieses Messmittel sicher wäre</translation>
    </message>
    <message>
        <source>%1, within limits</source>
        <translation>%1, in den Grenzen</translation>
    </message>
    <message>
        <source>Not read yet</source>
        <translation>Noch nicht gemessen</translation>
    </message>
    <message>
        <source>Not judged by this set</source>
        <translation>Von diesem Satz nicht beurteilt</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>ungleich</translation>
    </message>
    <message>
        <source>uneven, a step of %1 from the note below</source>
        <translation>ungleich, eine Stufe von %1 zum tieferen Ton</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 %3 (mean of %4 takes)</source>
        <translation>%1, %2 %3 (Mittel aus %4 Messungen)</translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <translation>%1, %2 %3</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1 to %2, target %3</source>
        <translation>%1 bis %2, Sollwert %3</translation>
    </message>
    <message>
        <source>at least %1, target %2</source>
        <translation>mindestens %1, Sollwert %2</translation>
    </message>
    <message>
        <source>at most %1, target %2</source>
        <translation>höchstens %1, Sollwert %2</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Sollwert %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 Set: %2.</source>
        <translation>%1 Satz: %2.</translation>
    </message>
    <message>
        <source>too low</source>
        <translation>zu niedrig</translation>
    </message>
    <message>
        <source>too high</source>
        <translation>zu hoch</translation>
    </message>
    <message>
        <source>higher</source>
        <translation>höher</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>niedriger</translation>
    </message>
    <message>
        <source>too close to the string</source>
        <translation>zu nah an der Saite</translation>
    </message>
    <message>
        <source>too far from the string</source>
        <translation>zu weit von der Saite</translation>
    </message>
    <message>
        <source>further off</source>
        <translation>weiter weg</translation>
    </message>
    <message>
        <source>closer</source>
        <translation>näher</translation>
    </message>
    <message>
        <source>too little play</source>
        <translation>zu wenig Spiel</translation>
    </message>
    <message>
        <source>too much play</source>
        <translation>zu viel Spiel</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation>früher</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>too small a drop</source>
        <translation>zu kleines Abnicken</translation>
    </message>
    <message>
        <source>too deep a drop</source>
        <translation>zu tiefes Abnicken</translation>
    </message>
    <message>
        <source>too shallow</source>
        <translation>zu flach</translation>
    </message>
    <message>
        <source>too deep</source>
        <translation>zu tief</translation>
    </message>
    <message>
        <source>deeper</source>
        <translation>tiefer</translation>
    </message>
    <message>
        <source>shallower</source>
        <translation>flacher</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>zu wenig</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>caught too close to the string</source>
        <translation>zu nah an der Saite gefangen</translation>
    </message>
    <message>
        <source>caught too far from the string</source>
        <translation>zu weit von der Saite gefangen</translation>
    </message>
    <message>
        <source>too early</source>
        <translation>zu früh</translation>
    </message>
    <message>
        <source>too late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>too light</source>
        <translation>zu leicht</translation>
    </message>
    <message>
        <source>too heavy</source>
        <translation>zu schwer</translation>
    </message>
    <message>
        <source>heavier</source>
        <translation>schwerer</translation>
    </message>
    <message>
        <source>lighter</source>
        <translation>leichter</translation>
    </message>
    <message>
        <source>too weak a return</source>
        <translation>zu schwache Rückkehr</translation>
    </message>
    <message>
        <source>too strong a return</source>
        <translation>zu starke Rückkehr</translation>
    </message>
    <message>
        <source>stronger</source>
        <translation>stärker</translation>
    </message>
    <message>
        <source>weaker</source>
        <translation>schwächer</translation>
    </message>
    <message>
        <source>on target</source>
        <translation>auf dem Sollwert</translation>
    </message>
</context>
<context>
    <name>trade</name>
    <message>
        <source>Limits and targets: no source.</source>
        <translation>Grenzen und Zielwerte: ohne Quelle.</translation>
    </message>
    <message>
        <source>low bass</source>
        <translation>tiefer Bass</translation>
    </message>
    <message>
        <source>bass</source>
        <translation>Bass</translation>
    </message>
    <message>
        <source>tenor</source>
        <translation>Tenor</translation>
    </message>
    <message>
        <source>treble</source>
        <translation>Diskant</translation>
    </message>
    <message>
        <source>high treble</source>
        <translation>hoher Diskant</translation>
    </message>
    <message>
        <source>one covered string</source>
        <translation>eine umsponnene Saite</translation>
    </message>
    <message>
        <source>two covered strings</source>
        <translation>zwei umsponnene Saiten</translation>
    </message>
    <message>
        <source>three covered strings</source>
        <translation>drei umsponnene Saiten</translation>
    </message>
    <message>
        <source>one plain string</source>
        <translation>eine blanke Saite</translation>
    </message>
    <message>
        <source>two plain strings</source>
        <translation>zwei blanke Saiten</translation>
    </message>
    <message>
        <source>three plain strings</source>
        <translation>drei blanke Saiten</translation>
    </message>
    <message>
        <source>single wound</source>
        <translation>einfach umsponnen</translation>
    </message>
    <message>
        <source>three plain</source>
        <translation>drei blanke</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation>Keil</translation>
    </message>
    <message>
        <source>split wedge</source>
        <translation>geteilter Keil</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>flach</translation>
    </message>
    <message>
        <source>single flat</source>
        <translation>einzeln flach</translation>
    </message>
    <message>
        <source>double flat</source>
        <translation>doppelt flach</translation>
    </message>
    <message>
        <source>over the hammers</source>
        <translation>über den Hämmern</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>hammers</source>
        <translation>Hämmer</translation>
    </message>
    <message>
        <source>hammer heads</source>
        <translation>Hammerköpfe</translation>
    </message>
    <message>
        <source>hammer shanks</source>
        <translation>Hammerstiele</translation>
    </message>
    <message>
        <source>hammer flanges</source>
        <translation>Hammerkapseln</translation>
    </message>
    <message>
        <source>hammer butts</source>
        <translation>Hammernüsse</translation>
    </message>
    <message>
        <source>bridle straps</source>
        <translation>Bändchen</translation>
    </message>
    <message>
        <source>key coverings</source>
        <translation>Tastenbeläge</translation>
    </message>
    <message>
        <source>keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>key frame</source>
        <translation>Klaviaturrahmen</translation>
    </message>
    <message>
        <source>key bed</source>
        <translation>Stuhlboden</translation>
    </message>
    <message>
        <source>key bushings</source>
        <translation>Tastengarnierungen</translation>
    </message>
    <message>
        <source>front rail punchings</source>
        <translation>Vorderdruckscheiben</translation>
    </message>
    <message>
        <source>balance rail punchings</source>
        <translation>Waagscheiben</translation>
    </message>
    <message>
        <source>damper felts</source>
        <translation>Dämpferfilze</translation>
    </message>
    <message>
        <source>strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>bass strings</source>
        <translation>Basssaiten</translation>
    </message>
    <message>
        <source>tuning pins</source>
        <translation>Stimmwirbel</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>Federn</translation>
    </message>
    <message>
        <source>repetition springs</source>
        <translation>Repetierfedern</translation>
    </message>
    <message>
        <source>wippens</source>
        <translation>Hebeglieder</translation>
    </message>
    <message>
        <source>jacks</source>
        <translation>Stoßzungen</translation>
    </message>
    <message>
        <source>let-off buttons</source>
        <translation>Auslösepuppen</translation>
    </message>
    <message>
        <source>backchecks</source>
        <translation>Fänger</translation>
    </message>
    <message>
        <source>casters</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>action</source>
        <translation>Mechanik</translation>
    </message>
    <message>
        <source>pedals</source>
        <translation>Pedale</translation>
    </message>
    <message>
        <source>soundboard</source>
        <translation>Resonanzboden</translation>
    </message>
    <message>
        <source>case</source>
        <translation>Gehäuse</translation>
    </message>
    <message>
        <source>felt</source>
        <translation>Filz</translation>
    </message>
    <message>
        <source>woven felt</source>
        <translation>Gewebefilz</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Tuch</translation>
    </message>
    <message>
        <source>leather</source>
        <translation>Leder</translation>
    </message>
    <message>
        <source>acrylic</source>
        <translation>Acryl</translation>
    </message>
    <message>
        <source>celluloid</source>
        <translation>Zelluloid</translation>
    </message>
    <message>
        <source>ivory</source>
        <translation>Elfenbein</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>copper on steel</source>
        <translation>Kupfer auf Stahl</translation>
    </message>
    <message>
        <source>cotton</source>
        <translation>Baumwolle</translation>
    </message>
    <message>
        <source>front</source>
        <translation>Vorderansicht</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>Innenansicht</translation>
    </message>
    <message>
        <source>blocking</source>
        <translation>blockiert</translation>
    </message>
    <message>
        <source>double striking</source>
        <translation>schlägt doppelt an</translation>
    </message>
    <message>
        <source>bobbling</source>
        <translation>stottert</translation>
    </message>
    <message>
        <source>sluggish return</source>
        <translation>kehrt träge zurück</translation>
    </message>
    <message>
        <source>click</source>
        <translation>klickt</translation>
    </message>
    <message>
        <source>Full-size upright, reference</source>
        <translation>Großes Klavier, Bezugswerte</translation>
    </message>
    <message>
        <source>Console or small upright, reference</source>
        <translation>Kleines Klavier, Bezugswerte</translation>
    </message>
    <message>
        <source>Grand under 2 m, reference</source>
        <translation>Flügel unter 2 m, Bezugswerte</translation>
    </message>
    <message>
        <source>Grand over 2 m, reference</source>
        <translation>Flügel über 2 m, Bezugswerte</translation>
    </message>
    <message>
        <source>Grand touch weights, reference</source>
        <translation>Spielgewichte des Flügels, Bezugswerte</translation>
    </message>
    <message>
        <source>Published figures, named at each point; "no source" where it is our own choice</source>
        <translation>Veröffentlichte Zahlen, bei jedem Punkt genannt; „ohne Quelle“, wo es unsere eigene Wahl ist</translation>
    </message>
    <message>
        <source>A reference to start from, put together from published figures; it is nobody's specification.</source>
        <translation>Bezugswerte für den Anfang, aus veröffentlichten Zahlen zusammengestellt; niemandes Vorschrift.</translation>
    </message>
    <message>
        <source>The maker's own manual for the instrument outranks it, and so does the shop's own practice: copy the set and change it.</source>
        <translation>Das Handbuch des Herstellers geht ihnen vor, ebenso die eigene Übung der Werkstatt: den Satz kopieren und ändern.</translation>
    </message>
    <message>
        <source>For verticals of about 40 to 47 in (102 to 120 cm) whose action stands on the keys.</source>
        <translation>Für Klaviere von etwa 40 bis 47 Zoll (102 bis 120 cm), deren Mechanik auf den Tasten steht.</translation>
    </message>
    <message>
        <source>No figures were found that are published for such instruments alone; all but the blow are those of the full-size set.</source>
        <translation>Eigens für solche Instrumente veröffentlichte Zahlen wurden nicht gefunden; alle außer der Steighöhe sind die des großen Satzes.</translation>
    </message>
    <message>
        <source>For verticals of about 48 in (122 cm) and taller.</source>
        <translation>Für Klaviere von etwa 48 Zoll (122 cm) an.</translation>
    </message>
    <message>
        <source>For grands of 2 m and longer.</source>
        <translation>Für Flügel ab 2 m.</translation>
    </message>
    <message>
        <source>For grands shorter than 2 m.</source>
        <translation>Für Flügel unter 2 m.</translation>
    </message>
    <message>
        <source>Where sources disagree it follows: for let-off the taper from 3 to 2 mm (S18), not one figure for all notes (S20, S62); for lost motion the least that can be felt (S22), not 1/16 in (S21); for checking 15 mm (S20), with the 3/4 in of British practice (S23) as the upper limit; for dip 3/8 to 7/16 in (S23, S24), not the 11.5 mm of S18, which contradicts its own inches.</source>
        <translation>Wo die Quellen einander widersprechen, folgt er: bei der Auslösung dem Verlauf von 3 auf 2 mm (S18), nicht einer Zahl für alle Töne (S20, S62); beim Leerweg dem Wenigsten, das man fühlt (S22), nicht 1/16 Zoll (S21); beim Fang 15 mm (S20), mit den 3/4 Zoll der britischen Übung (S23) als oberer Grenze; beim Tiefgang 3/8 bis 7/16 Zoll (S23, S24), nicht den 11,5 mm aus S18, die dort den Zollmaßen widersprechen.</translation>
    </message>
    <message>
        <source>Where sources disagree it follows: for let-off the taper from bass to treble (S03) with 2 mm at the top (S81), not 3 mm throughout (S73); drop is taken below the let-off point (S01, S03), not from the string (S29, S40); for checking a fixed distance (S17, S36, S38), although one maker gives none (S39); for aftertouch .030 to .050 in (S32), not 1/8 in (S25).</source>
        <translation>Wo die Quellen einander widersprechen, folgt er: bei der Auslösung dem Verlauf vom Bass zum Diskant (S03) mit 2 mm ganz oben (S81), nicht 3 mm durchweg (S73); das Absinken zählt vom Auslösepunkt an (S01, S03), nicht von der Saite (S29, S40); beim Fang einem festen Abstand (S17, S36, S38), obwohl ein Hersteller keinen nennt (S39); beim Nachdruck 0,030 bis 0,050 Zoll (S32), nicht 1/8 Zoll (S25).</translation>
    </message>
    <message>
        <source>Instruments with a silencing rail need more let-off than this set allows; their maker's figure applies.</source>
        <translation>Instrumente mit Stummschaltleiste brauchen mehr Auslösung, als dieser Satz erlaubt; es gilt die Zahl ihres Herstellers.</translation>
    </message>
    <message>
        <source>Dip is meant at the front edge of the key.</source>
        <translation>Der Tiefgang gilt an der Vorderkante der Taste.</translation>
    </message>
    <message>
        <source>Actions of another design, such as one without aftertouch (S04), need their maker's figures.</source>
        <translation>Mechaniken anderer Bauart, etwa eine ohne Nachdruck (S04), brauchen die Zahlen ihres Herstellers.</translation>
    </message>
    <message>
        <source>Key height is not judged, because published figures start from different places.</source>
        <translation>Die Tastenhöhe wird nicht beurteilt, weil die veröffentlichten Zahlen von verschiedenen Stellen aus zählen.</translation>
    </message>
    <message>
        <source>Damper timing is not judged, because the top notes have no dampers; half of the blow is the usual figure.</source>
        <translation>Der Dämpferbeginn wird nicht beurteilt, weil die höchsten Töne keine Dämpfer haben; üblich ist die halbe Steighöhe.</translation>
    </message>
    <message>
        <source>Touch weights are judged by a set of their own.</source>
        <translation>Spielgewichte beurteilt ein eigener Satz.</translation>
    </message>
    <message>
        <source>It judges nothing but down weight and up weight, taken at the front of the key with the dampers lifted.</source>
        <translation>Er beurteilt nur Niedergewicht und Aufgewicht, vorn an der Taste und bei gehobenen Dämpfern genommen.</translation>
    </message>
    <message>
        <source>It follows one series of articles (S41), whose figures fall from bass to treble; others give one figure for all notes (S66, S67, S90), and what players like lies wider apart (S65).</source>
        <translation>Er folgt einer Reihe von Aufsätzen (S41), deren Zahlen vom Bass zum Diskant fallen; andere geben eine Zahl für alle Töne (S66, S67, S90), und was Spieler mögen, liegt weiter auseinander (S65).</translation>
    </message>
    <message>
        <source>Friction is half of down weight minus up weight, balance weight half of their sum; both are worked out, never judged.</source>
        <translation>Die Reibung ist die halbe Differenz von Niedergewicht und Aufgewicht, das Ausgleichsgewicht die halbe Summe; beide werden gerechnet, nie beurteilt.</translation>
    </message>
    <message>
        <source>.030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32)</source>
        <translation>0,030 Zoll, E. Foote, angeführt in Keydip: METHOD, Pianotech-Liste, Aug. 1999 (S32)</translation>
    </message>
    <message>
        <source>.030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) (of grands)</source>
        <translation>0,030 Zoll, E. Foote, angeführt in Keydip: METHOD, Pianotech-Liste, Aug. 1999 (S32) (für Flügel)</translation>
    </message>
    <message>
        <source>.045 in, F. Sturm / M. Cramer, Drop, CAUT list, Jun 2004 (S31)</source>
        <translation>0,045 Zoll, F. Sturm / M. Cramer, Drop, CAUT-Liste, Juni 2004 (S31)</translation>
    </message>
    <message>
        <source>.050 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) and B. Ballard, Steinway regulation, Pianotech list, May 1999 (S33)</source>
        <translation>0,050 Zoll, E. Foote, angeführt in Keydip: METHOD, Pianotech-Liste, Aug. 1999 (S32), und B. Ballard, Steinway regulation, Pianotech-Liste, Mai 1999 (S33)</translation>
    </message>
    <message>
        <source>.050 in, N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</source>
        <translation>0,050 Zoll, N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech-Liste, März 1998 (S18)</translation>
    </message>
    <message>
        <source>.420 in, D. Skolnik, Pianotech list, Mar 2008 (S06)</source>
        <translation>0,420 Zoll, D. Skolnik, Pianotech-Liste, März 2008 (S06)</translation>
    </message>
    <message>
        <source>1 3/4 in, J. Page, Mechanical Music Digest 2003.01.20.11 (S21) and R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</source>
        <translation>1 3/4 Zoll, J. Page, Mechanical Music Digest 2003.01.20.11 (S21), und R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</translation>
    </message>
    <message>
        <source>1 7/8 in, Steinway &amp; Sons, grand technical guide (S01)</source>
        <translation>1 7/8 Zoll, Steinway &amp; Sons, technische Anleitung für Flügel (S01)</translation>
    </message>
    <message>
        <source>1/16 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</source>
        <translation>1/16 Zoll, QRS Music Technologies, Einbauanleitung PNOmation II, S. 7, 2013 (S03)</translation>
    </message>
    <message>
        <source>1/16 in, Steinway &amp; Sons, grand technical guide (S01) and QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</source>
        <translation>1/16 Zoll, Steinway &amp; Sons, technische Anleitung für Flügel (S01), und QRS Music Technologies, Einbauanleitung PNOmation II, S. 7, 2013 (S03)</translation>
    </message>
    <message>
        <source>1/8 in, Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)</source>
        <translation>1/8 Zoll, Mechanical Music Digest 2010.02.15.07, Regulierung und Verschleiß von Klavieren (S20)</translation>
    </message>
    <message>
        <source>1/8 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</source>
        <translation>1/8 Zoll, QRS Music Technologies, Einbauanleitung PNOmation II, S. 7, 2013 (S03)</translation>
    </message>
    <message>
        <source>7/16 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23) and R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</source>
        <translation>7/16 Zoll, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23), und R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</translation>
    </message>
    <message>
        <source>H. Beckett, Simplifying the Secrets of Upright Aftertouch, proptn.org, Mar 2022 (S76)</source>
        <translation>H. Beckett, Simplifying the Secrets of Upright Aftertouch, proptn.org, März 2022 (S76)</translation>
    </message>
    <message>
        <source>J. Rappaport via A. Todd, Backcheck height, Pianotech list, May 2003 (S38)</source>
        <translation>J. Rappaport, mitgeteilt von A. Todd, Backcheck height, Pianotech-Liste, Mai 2003 (S38)</translation>
    </message>
    <message>
        <source>Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)</source>
        <translation>Mechanical Music Digest 2010.02.15.07, Regulierung und Verschleiß von Klavieren (S20)</translation>
    </message>
    <message>
        <source>N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</source>
        <translation>N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech-Liste, März 1998 (S18)</translation>
    </message>
    <message>
        <source>Piano Cloud (Miki), regulating an upright, Apr 2020 (S12)</source>
        <translation>Piano Cloud (Miki), Regulierung eines Klaviers, April 2020 (S12)</translation>
    </message>
    <message>
        <source>Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)</source>
        <translation>Piano Tuning Matters, Grand Regulation, Teil XXV, Juli 2016 (S41)</translation>
    </message>
    <message>
        <source>R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05)</source>
        <translation>R. Brekne, der die Handbücher von sechs Herstellern anführt, Pianotech-Liste, Okt. 2002 (S05)</translation>
    </message>
    <message>
        <source>R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05) and R. Brekne, dip gauge thread, Pianotech list, Feb 2009 (S09)</source>
        <translation>R. Brekne, der die Handbücher von sechs Herstellern anführt, Pianotech-Liste, Okt. 2002 (S05), und R. Brekne, über Lehren für den Tiefgang, Pianotech-Liste, Feb. 2009 (S09)</translation>
    </message>
    <message>
        <source>R. Brekne, dip gauge thread, Pianotech list, Feb 2009 (S09)</source>
        <translation>R. Brekne, über Lehren für den Tiefgang, Pianotech-Liste, Feb. 2009 (S09)</translation>
    </message>
    <message>
        <source>down weight less 25 to 30 g, the middle, Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)</source>
        <translation>Niedergewicht weniger 25 bis 30 g, die Mitte, Piano Tuning Matters, Grand Regulation, Teil XXV, Juli 2016 (S41)</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>ohne Quelle</translation>
    </message>
    <message>
        <source>no source; between the 2 mm of S30 and the 1/8 in of S03</source>
        <translation>ohne Quelle; zwischen den 2 mm von S30 und den 1/8 Zoll von S03</translation>
    </message>
    <message>
        <source>no source; sharps are set from their aftertouch (S30)</source>
        <translation>ohne Quelle; schwarze Tasten werden nach ihrem Nachdruck eingestellt (S30)</translation>
    </message>
    <message>
        <source>none at all is the least there can be; R. Waring, Mechanical Music Digest 2003.01.20.10 (S22) wants &quot;just the tiniest amount&quot;</source>
        <translation>weniger als gar keiner geht nicht; R. Waring, Mechanical Music Digest 2003.01.20.10 (S22), will ihn „so klein wie nur möglich“</translation>
    </message>
    <message>
        <source>pianotuner.jp, upright regulation order and dimensions (S10) and N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</source>
        <translation>pianotuner.jp, Reihenfolge und Maße der Klavierregulierung (S10), und N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech-Liste, März 1998 (S18)</translation>
    </message>
    <message>
        <source>pianotuner.jp, upright regulation order and dimensions (S10) and R. Waring, Mechanical Music Digest 2003.01.20.10 (S22)</source>
        <translation>pianotuner.jp, Reihenfolge und Maße der Klavierregulierung (S10), und R. Waring, Mechanical Music Digest 2003.01.20.10 (S22)</translation>
    </message>
    <message>
        <source>posted as &apos;antares&apos;, Backchecking Height, Pianotech list, May 2003 (S36)</source>
        <translation>Beitrag unter dem Namen „antares“, Backchecking Height, Pianotech-Liste, Mai 2003 (S36)</translation>
    </message>
    <message>
        <source>the +/- 0.2 mm about the target of R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05), used between neighbours (that use: no source)</source>
        <translation>die ±0,2 mm um den Sollwert bei R. Brekne, der die Handbücher von sechs Herstellern anführt, Pianotech-Liste, Okt. 2002 (S05), hier zwischen Nachbarn verwendet (diese Verwendung: ohne Quelle)</translation>
    </message>
    <message>
        <source>the middle of 44 to 48 mm, R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05)</source>
        <translation>die Mitte von 44 bis 48 mm, R. Brekne, der die Handbücher von sechs Herstellern anführt, Pianotech-Liste, Okt. 2002 (S05)</translation>
    </message>
    <message>
        <source>wus-piano.com, grand aftertouch (S81)</source>
        <translation>wus-piano.com, Nachdruck beim Flügel (S81)</translation>
    </message>
    <message>
        <source>3/4 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23)</source>
        <translation>3/4 Zoll, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23)</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>gängige Praxis</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>gängige Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
</context>
</TS>
