<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Record</name>
    <message>
        <source>Those of the recheck are readings-recheck.csv.</source>
        <translation>Those of the recheck are readings-recheck.csv.</translation>
    </message>
    <message>
        <source>Where this record comes from</source>
        <translation>Where this record comes from</translation>
    </message>
    <message>
        <source>Read again on %1: %2 of the measures. Of these %3 are where they should be.</source>
        <translation>Read again on %1: %2 of the measures. Of these %3 are where they should be.</translation>
    </message>
    <message>
        <source>Inside, but too close to a limit to be called in by the rule used: %1.</source>
        <translation>Inside, but too close to a limit to be called in by the rule used: %1.</translation>
    </message>
    <message>
        <source>Workshop: %1.</source>
        <translation>Workshop: %1.</translation>
    </message>
    <message>
        <source>Keys are named with their octave: C4 is middle C, A#4 the black key right above A4.</source>
        <translation>Keys are named with their octave: C4 is middle C, A#4 the black key right above A4.</translation>
    </message>
    <message>
        <source>Looked through and signed by %1 on %2.</source>
        <translation>Looked through and signed by %1 on %2.</translation>
    </message>
    <message>
        <source>Remark: %1</source>
        <translation>Remark: %1</translation>
    </message>
    <message>
        <source>Remark on the readings of %1: %2</source>
        <translation>Remark on the readings of %1: %2</translation>
    </message>
    <message>
        <source>Remarks on single readings</source>
        <translation>Remarks on single readings</translation>
    </message>
    <message>
        <source>value</source>
        <translation>value</translation>
    </message>
    <message>
        <source>� stands for a letter that the type of this document does not have. The files inside it hold what was typed.</source>
        <translation>� stands for a letter that the type of this document does not have. The files inside it hold what was typed.</translation>
    </message>
    <message>
        <source>%1: uncertainty %2 (k = 2), from the gauge study of “%3”, %4.</source>
        <translation>%1: uncertainty %2 (k = 2), from the gauge study of “%3”, %4.</translation>
    </message>
    <message>
        <source>How finely they were read off makes up %1 % of that doubt (of its variance, the median of the readings); the rest is gauge and people.</source>
        <translation>How finely they were read off makes up %1 % of that doubt (of its variance, the median of the readings); the rest is gauge and people.</translation>
    </message>
    <message>
        <source>Neither the gauge nor the set states an uncertainty, so that only how finely the readings were read off is counted.</source>
        <translation>Neither the gauge nor the set states an uncertainty, so that only how finely the readings were read off is counted.</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Exceptions</translation>
    </message>
    <message>
        <source>Every reading</source>
        <translation>Every reading</translation>
    </message>
    <message>
        <source>renewed</source>
        <translation>renewed</translation>
    </message>
    <message>
        <source>repinned</source>
        <translation>repinned</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>cleaned</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>recovered</translation>
    </message>
    <message>
        <source>refinished</source>
        <translation>refinished</translation>
    </message>
    <message>
        <source>replated</source>
        <translation>replated</translation>
    </message>
    <message>
        <source>pedal trapwork</source>
        <translation>pedal trapwork</translation>
    </message>
    <message>
        <source>restrung</source>
        <translation>restrung</translation>
    </message>
    <message>
        <source>repaired</source>
        <translation>repaired</translation>
    </message>
    <message>
        <source>found altered</source>
        <translation>found altered</translation>
    </message>
    <message>
        <source>other work</source>
        <translation>other work</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Case</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Keys</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Action</translation>
    </message>
    <message>
        <source>Pedals</source>
        <translation>Pedals</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Strings</translation>
    </message>
    <message>
        <source>Pin block</source>
        <translation>Pin block</translation>
    </message>
    <message>
        <source>Soundboard</source>
        <translation>Soundboard</translation>
    </message>
    <message>
        <source>unserviceable</source>
        <translation>unserviceable</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>poor</translation>
    </message>
    <message>
        <source>serviceable</source>
        <translation>serviceable</translation>
    </message>
    <message>
        <source>good</source>
        <translation>good</translation>
    </message>
    <message>
        <source>as new</source>
        <translation>as new</translation>
    </message>
    <message>
        <source>As received</source>
        <translation>As received</translation>
    </message>
    <message>
        <source>As it leaves</source>
        <translation>As it leaves</translation>
    </message>
    <message>
        <source>whole instrument</source>
        <translation>whole instrument</translation>
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
        <translation>out</translation>
    </message>
    <message>
        <source>close</source>
        <translation>close</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>uneven</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>measure</source>
        <translation>measure</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>verdict</translation>
    </message>
    <message>
        <source>what it means</source>
        <translation>what it means</translation>
    </message>
    <message>
        <source>Accepted as it is</source>
        <translation>Accepted as it is</translation>
    </message>
    <message>
        <source>Promised by the tolerance set and not measured</source>
        <translation>Promised by the tolerance set and not measured</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>how many</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>notes</translation>
    </message>
    <message>
        <source>Felt and not measured</source>
        <translation>Felt and not measured</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>fault</translation>
    </message>
    <message>
        <source>Accepted as they are</source>
        <translation>Accepted as they are</translation>
    </message>
    <message>
        <source>why</source>
        <translation>why</translation>
    </message>
    <message>
        <source>by whom, when</source>
        <translation>by whom, when</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>missing</translation>
    </message>
    <message>
        <source>There are none: every measure that the tolerance set names was read, lies inside its limits and is even with its neighbours.</source>
        <translation>There are none: every measure that the tolerance set names was read, lies inside its limits and is even with its neighbours.</translation>
    </message>
    <message>
        <source>Out of limits, close to a limit, or uneven, worst first: ordered by the distance from target in units of half the width between the limits.</source>
        <translation>Out of limits, close to a limit, or uneven, worst first: ordered by the distance from target in units of half the width between the limits.</translation>
    </message>
    <message>
        <source>Regulation record</source>
        <translation>Regulation record</translation>
    </message>
    <message>
        <source>measures that this workshop promises are where they should be, as measured on %1.</source>
        <translation>measures that this workshop promises are where they should be, as measured on %1.</translation>
    </message>
    <message>
        <source>When the instrument came in, %1 of %2 were.</source>
        <translation>When the instrument came in, %1 of %2 were.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 of %2</translation>
    </message>
    <message>
        <source>Each key carries a small gauge with its worst measure on it: inside the grey field it is where it should be; above or below the field it is too large or too small. A broken outline was not measured. A small step at a key's edge: the key differs much from its neighbour.</source>
        <translation>Each key carries a small gauge with its worst measure on it: inside the grey field it is where it should be; above or below the field it is too large or too small. A broken outline was not measured. A small step at a key's edge: the key differs much from its neighbour.</translation>
    </message>
    <message>
        <source> The work was not finished when these readings were taken.</source>
        <translation> The work was not finished when these readings were taken.</translation>
    </message>
    <message>
        <source> These readings show the instrument as it came; no work on it is recorded.</source>
        <translation> These readings show the instrument as it came; no work on it is recorded.</translation>
    </message>
    <message>
        <source>The action was measured key by key (%1 readings).</source>
        <translation>The action was measured key by key (%1 readings).</translation>
    </message>
    <message>
        <source>The action was measured key by key (%1 readings). How it was before is not recorded.</source>
        <translation>The action was measured key by key (%1 readings). How it was before is not recorded.</translation>
    </message>
    <message>
        <source>The action was measured key by key as it came (%1 readings), set, and measured again (%2 readings). %3 measures that were outside their limits came inside.</source>
        <translation>The action was measured key by key as it came (%1 readings), set, and measured again (%2 readings). %3 measures that were outside their limits came inside.</translation>
    </message>
    <message>
        <source>Renewed: %1.</source>
        <translation>Renewed: %1.</translation>
    </message>
    <message>
        <source>Parts of it are not as its maker built them: see what was done.</source>
        <translation>Parts of it are not as its maker built them: see what was done.</translation>
    </message>
    <message>
        <source>What a player feels</source>
        <translation>What a player feels</translation>
    </message>
    <message>
        <source>keys out before</source>
        <translation>keys out before</translation>
    </message>
    <message>
        <source>keys out now</source>
        <translation>keys out now</translation>
    </message>
    <message>
        <source>Nothing that was promised is outside its limits or unmeasured.</source>
        <translation>Nothing that was promised is outside its limits or unmeasured.</translation>
    </message>
    <message>
        <source>Outside their limits: %1. Promised and not measured: %2. Page %3 names each of them.</source>
        <translation>Outside their limits: %1. Promised and not measured: %2. Page %3 names each of them.</translation>
    </message>
    <message>
        <source>This record speaks of the day on which the instrument was measured. It is no promise of how long that lasts. The pages that follow are for your technician: limits and their sources, charts, every reading, and how it was measured.</source>
        <translation>This record speaks of the day on which the instrument was measured. It is no promise of how long that lasts. The pages that follow are for your technician: limits and their sources, charts, every reading, and how it was measured.</translation>
    </message>
    <message>
        <source>Revision %1. It takes the place of revision %2, issued on %3.</source>
        <translation>Revision %1. It takes the place of revision %2, issued on %3.</translation>
    </message>
    <message>
        <source>Sealed by %1. Fingerprint of the certificate (SHA-256):
%2</source>
        <translation>Sealed by %1. Fingerprint of the certificate (SHA-256):
%2</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>not stated</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 % relative humidity</source>
        <translation>%1 % relative humidity</translation>
    </message>
    <message>
        <source>began</source>
        <translation>began</translation>
    </message>
    <message>
        <source>measured by</source>
        <translation>measured by</translation>
    </message>
    <message>
        <source>climate</source>
        <translation>climate</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>gauge</translation>
    </message>
    <message>
        <source>resolution of the gauge</source>
        <translation>resolution of the gauge</translation>
    </message>
    <message>
        <source>its expanded uncertainty, k = 2</source>
        <translation>its expanded uncertainty, k = 2</translation>
    </message>
    <message>
        <source>dip measured at</source>
        <translation>dip measured at</translation>
    </message>
    <message>
        <source>drop measured</source>
        <translation>drop measured</translation>
    </message>
    <message>
        <source>readings, takes counted</source>
        <translation>readings, takes counted</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remark</translation>
    </message>
    <message>
        <source>sections</source>
        <translation>sections</translation>
    </message>
    <message>
        <source>The instrument as received</source>
        <translation>The instrument as received</translation>
    </message>
    <message>
        <source>what stands there</source>
        <translation>what stands there</translation>
    </message>
    <message>
        <source>stringing</source>
        <translation>stringing</translation>
    </message>
    <message>
        <source>dampers</source>
        <translation>dampers</translation>
    </message>
    <message>
        <source>What each measure is</source>
        <translation>What each measure is</translation>
    </message>
    <message>
        <source>how it is measured</source>
        <translation>how it is measured</translation>
    </message>
    <message>
        <source>What was not measured</source>
        <translation>What was not measured</translation>
    </message>
    <message>
        <source>On no note: %1.</source>
        <translation>On no note: %1.</translation>
    </message>
    <message>
        <source>Single notes that were promised and not read are listed under “%1”.</source>
        <translation>Single notes that were promised and not read are listed under “%1”.</translation>
    </message>
    <message>
        <source>This record is about the regulation of the action. It says nothing of tuning, tone, strings, soundboard, pin block, case or value.</source>
        <translation>This record is about the regulation of the action. It says nothing of tuning, tone, strings, soundboard, pin block, case or value.</translation>
    </message>
    <message>
        <source>Signed by %1 on %2 (revision %3 of the pass).</source>
        <translation>Signed by %1 on %2 (revision %3 of the pass).</translation>
    </message>
    <message>
        <source>Nobody has signed the newest pass in the logbook.</source>
        <translation>Nobody has signed the newest pass in the logbook.</translation>
    </message>
    <message>
        <source>This is revision %1 of the record. It takes the place of revision %2, issued on %3, whose file has the digest (SHA-256)
%4</source>
        <translation>This is revision %1 of the record. It takes the place of revision %2, issued on %3, whose file has the digest (SHA-256)
%4</translation>
    </message>
    <message>
        <source>Buyer: %1</source>
        <translation>Buyer: %1</translation>
    </message>
    <message>
        <source>Price: %1</source>
        <translation>Price: %1</translation>
    </message>
    <message>
        <source>Of the sale: %1</source>
        <translation>Of the sale: %1</translation>
    </message>
    <message>
        <source>What this record is</source>
        <translation>What this record is</translation>
    </message>
    <message>
        <source> (%1) and readings-as-found.csv</source>
        <translation> (%1) and readings-as-found.csv</translation>
    </message>
    <message>
        <source>The logbook that this record was made from stood at entry %1 of its history, whose digest (SHA-256) is
%2
Whoever keeps the logbook can be asked to show that it still holds this entry.</source>
        <translation>The logbook that this record was made from stood at entry %1 of its history, whose digest (SHA-256) is
%2
Whoever keeps the logbook can be asked to show that it still holds this entry.</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>How it was measured</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Cautions</translation>
    </message>
    <message>
        <source>These are the usual cautions of the trade and no legal advice. The law of your country, local rules and licensed practice come before them.</source>
        <translation>These are the usual cautions of the trade and no legal advice. The law of your country, local rules and licensed practice come before them.</translation>
    </message>
    <message>
        <source>found</source>
        <translation>found</translation>
    </message>
    <message>
        <source>again</source>
        <translation>again</translation>
    </message>
    <message>
        <source>left</source>
        <translation>left</translation>
    </message>
    <message>
        <source>▲ out, above the upper limit · ▼ out, below the lower limit · ~ inside, but close to a limit · u uneven with its lower neighbour · * mean of more than one take · missing: promised and not read. A thin line marks a section break. Every take stands in the files inside this document.</source>
        <translation>▲ out, above the upper limit · ▼ out, below the lower limit · ~ inside, but close to a limit · u uneven with its lower neighbour · * mean of more than one take · missing: promised and not read. A thin line marks a section break. Every take stands in the files inside this document.</translation>
    </message>
    <message>
        <source>%1 cm long</source>
        <translation>%1 cm long</translation>
    </message>
    <message>
        <source>%1 cm high</source>
        <translation>%1 cm high</translation>
    </message>
    <message>
        <source>The keys lie level</source>
        <translation>The keys lie level</translation>
    </message>
    <message>
        <source>The hammers wait at the right distance from the strings</source>
        <translation>The hammers wait at the right distance from the strings</translation>
    </message>
    <message>
        <source>The key takes hold of the hammer without slack</source>
        <translation>The key takes hold of the hammer without slack</translation>
    </message>
    <message>
        <source>The hammer is let go close to the string, for soft playing</source>
        <translation>The hammer is let go close to the string, for soft playing</translation>
    </message>
    <message>
        <source>The hammer sinks back a little once it is let go</source>
        <translation>The hammer sinks back a little once it is let go</translation>
    </message>
    <message>
        <source>The keys go down equally deep</source>
        <translation>The keys go down equally deep</translation>
    </message>
    <message>
        <source>The end of the key's way feels alike</source>
        <translation>The end of the key's way feels alike</translation>
    </message>
    <message>
        <source>The hammer is caught after its blow, for fast repeats</source>
        <translation>The hammer is caught after its blow, for fast repeats</translation>
    </message>
    <message>
        <source>The dampers lift at the right moment</source>
        <translation>The dampers lift at the right moment</translation>
    </message>
    <message>
        <source>The keys ask for a like weight of hand</source>
        <translation>The keys ask for a like weight of hand</translation>
    </message>
    <message>
        <source>The keys come back with a like strength</source>
        <translation>The keys come back with a like strength</translation>
    </message>
    <message>
        <source>Grand piano</source>
        <translation>Grand piano</translation>
    </message>
    <message>
        <source>Upright piano</source>
        <translation>Upright piano</translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>serial number %1</translation>
    </message>
    <message>
        <source>built %1</source>
        <translation>built %1</translation>
    </message>
    <message>
        <source>%1 notes, %2</source>
        <translation>%1 notes, %2</translation>
    </message>
    <message>
        <source>Strings. The strings of a piano pull with many tonnes together. A string or a pin that lets go can hurt badly. Leave strings, pins and frame to a trained technician.</source>
        <translation>Strings. The strings of a piano pull with many tonnes together. A string or a pin that lets go can hurt badly. Leave strings, pins and frame to a trained technician.</translation>
    </message>
    <message>
        <source>Tipping. A tall upright is heavy at its back and can fall over backwards. Nobody stands behind it while it is moved; have it moved by people who do this for a living, and keep it on level floor.</source>
        <translation>Tipping. A tall upright is heavy at its back and can fall over backwards. Nobody stands behind it while it is moved; have it moved by people who do this for a living, and keep it on level floor.</translation>
    </message>
    <message>
        <source>Lead. The keys of this instrument may hold lead weights, and old lead sheds a pale dust. Keep children from it, wipe moist rather than brush, wash hands. Local rules on lead come first.</source>
        <translation>Lead. The keys of this instrument may hold lead weights, and old lead sheds a pale dust. Keep children from it, wipe moist rather than brush, wash hands. Local rules on lead come first.</translation>
    </message>
    <message>
        <source>Ivory. The keys of this instrument may be covered with ivory; this record does not say whether they are. Many countries restrict its sale, hire or carriage across a border: ask the law of your country before you sell, lend or move the instrument.</source>
        <translation>Ivory. The keys of this instrument may be covered with ivory; this record does not say whether they are. Many countries restrict its sale, hire or carriage across a border: ask the law of your country before you sell, lend or move the instrument.</translation>
    </message>
    <message>
        <source>Dust. Old pianos hold dust that may carry moth poison, mould or old finish. Have it cleaned with suction and a mask by somebody who knows it; local rules come first.</source>
        <translation>Dust. Old pianos hold dust that may carry moth poison, mould or old finish. Have it cleaned with suction and a mask by somebody who knows it; local rules come first.</translation>
    </message>
    <message>
        <source>Climate. Wood and felt move with the seasons, and the distances in this record with them. A steady room, neither dry nor damp, keeps the instrument closest to the state written here.</source>
        <translation>Climate. Wood and felt move with the seasons, and the distances in this record with them. A steady room, neither dry nor damp, keeps the instrument closest to the state written here.</translation>
    </message>
    <message>
        <source>Guarded: a value counts as in only where it lies inside its limits by at least the expanded uncertainty W. Nearer to a limit than that, it is called close to the limit; beyond the limit, out.</source>
        <translation>Guarded: a value counts as in only where it lies inside its limits by at least the expanded uncertainty W. Nearer to a limit than that, it is called close to the limit; beyond the limit, out.</translation>
    </message>
    <message>
        <source>Simple: a value counts as in where it lies inside its limits or on one of them, and as out beyond. Close to a limit, the uncertainty of the gauge may put the true value on the other side; buyer and shop share that risk.</source>
        <translation>Simple: a value counts as in where it lies inside its limits or on one of them, and as out beyond. Close to a limit, the uncertainty of the gauge may put the true value on the other side; buyer and shop share that risk.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 to %2</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>pass</translation>
    </message>
    <message>
        <source>notes
read</source>
        <translation>notes
read</translation>
    </message>
    <message>
        <source>not
read</source>
        <translation>not
read</translation>
    </message>
    <message>
        <source>close to
a limit</source>
        <translation>close to
a limit</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>mean</translation>
    </message>
    <message>
        <source>standard
deviation</source>
        <translation>standard
deviation</translation>
    </message>
    <message>
        <source>What changed, over the notes read in both passes</source>
        <translation>What changed, over the notes read in both passes</translation>
    </message>
    <message>
        <source>mean change</source>
        <translation>mean change</translation>
    </message>
    <message>
        <source>95 % of the mean change</source>
        <translation>95 % of the mean change</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>mended</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>spoiled</translation>
    </message>
    <message>
        <source>Mended: out before and no longer out. Spoiled: the reverse. The interval is that of a paired comparison (Student, two-sided).</source>
        <translation>Mended: out before and no longer out. Spoiled: the reverse. The interval is that of a paired comparison (Student, two-sided).</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Before and after</translation>
    </message>
    <message>
        <source>The state in figures</source>
        <translation>The state in figures</translation>
    </message>
    <message>
        <source>Along the keyboard</source>
        <translation>Along the keyboard</translation>
    </message>
    <message>
        <source>as the set</source>
        <translation>as the set</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>no source</translation>
    </message>
    <message>
        <source>keys</source>
        <translation>keys</translation>
    </message>
    <message>
        <source>at note</source>
        <translation>at note</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>lowest</translation>
    </message>
    <message>
        <source>target</source>
        <translation>target</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>highest</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>all</source>
        <translation>all</translation>
    </message>
    <message>
        <source>naturals</source>
        <translation>naturals</translation>
    </message>
    <message>
        <source>sharps</source>
        <translation>sharps</translation>
    </message>
    <message>
        <source>Between two notes named here the values lie on a straight line by note number; beyond the outermost they stay.</source>
        <translation>Between two notes named here the values lie on a straight line by note number; beyond the outermost they stay.</translation>
    </message>
    <message>
        <source>not counted in</source>
        <translation>not counted in</translation>
    </message>
    <message>
        <source>%1, k = %2</source>
        <translation>%1, k = %2</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Decision rule</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>rule</translation>
    </message>
    <message>
        <source>expanded uncertainty W</source>
        <translation>expanded uncertainty W</translation>
    </message>
    <message>
        <source>largest step that is even</source>
        <translation>largest step that is even</translation>
    </message>
    <message>
        <source>A step is the difference from the nearest lower note that was read, at most four notes below, of the same colour where keys are compared, and not across a section break.</source>
        <translation>A step is the difference from the nearest lower note that was read, at most four notes below, of the same colour where keys are compared, and not across a section break.</translation>
    </message>
    <message>
        <source>What was promised</source>
        <translation>What was promised</translation>
    </message>
    <message>
        <source>Tolerance set: %1.</source>
        <translation>Tolerance set: %1.</translation>
    </message>
    <message>
        <source>The set names no source.</source>
        <translation>The set names no source.</translation>
    </message>
    <message>
        <source>Source of the set: %1</source>
        <translation>Source of the set: %1</translation>
    </message>
    <message>
        <source>Where the maker's manual gives other values, the manual outranks these.</source>
        <translation>Where the maker's manual gives other values, the manual outranks these.</translation>
    </message>
    <message>
        <source>The log of work holds no entry.</source>
        <translation>The log of work holds no entry.</translation>
    </message>
    <message>
        <source>day</source>
        <translation>day</translation>
    </message>
    <message>
        <source>work</source>
        <translation>work</translation>
    </message>
    <message>
        <source>material, remark</source>
        <translation>material, remark</translation>
    </message>
    <message>
        <source>by whom, time</source>
        <translation>by whom, time</translation>
    </message>
    <message>
        <source>Departures from the original build</source>
        <translation>Departures from the original build</translation>
    </message>
    <message>
        <source>None is recorded.</source>
        <translation>None is recorded.</translation>
    </message>
    <message>
        <source>%1 (%2 of 5)</source>
        <translation>%1 (%2 of 5)</translation>
    </message>
    <message>
        <source>Condition by area</source>
        <translation>Condition by area</translation>
    </message>
    <message>
        <source>By the workshop's eye on the day, on five steps from unserviceable (1) to as new (5).</source>
        <translation>By the workshop's eye on the day, on five steps from unserviceable (1) to as new (5).</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Photographs</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>What was done</translation>
    </message>
    <message>
        <source>Regulation record: %1</source>
        <translation>Regulation record: %1</translation>
    </message>
    <message>
        <source>Issued %1</source>
        <translation>Issued %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 of %2</translation>
    </message>
    <message>
        <source>no change told apart</source>
        <translation>no change told apart</translation>
    </message>
    <message>
        <source>has become smaller</source>
        <translation>has become smaller</translation>
    </message>
    <message>
        <source>has become larger</source>
        <translation>has become larger</translation>
    </message>
    <message>
        <source>doubt of the gauge not known</source>
        <translation>doubt of the gauge not known</translation>
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
        <translation>told apart
from</translation>
    </message>
    <message>
        <source>notes
moved</source>
        <translation>notes
moved</translation>
    </message>
    <message>
        <source>most</source>
        <translation>most</translation>
    </message>
    <message>
        <source>which way</source>
        <translation>which way</translation>
    </message>
    <message>
        <source>What moved since it was left</source>
        <translation>What moved since it was left</translation>
    </message>
    <message>
        <source>Climate on both days. %1 %2</source>
        <translation>Climate on both days. %1 %2</translation>
    </message>
    <message>
        <source>No note was read on both days.</source>
        <translation>No note was read on both days.</translation>
    </message>
    <message>
        <source>A change is told apart from none where it is larger than the expanded uncertainty (k = 2) of a difference of two readings, which stands under “told apart from”. The mean of many notes is held against the same figure: what a gauge has wrong, it has wrong on every note alike.</source>
        <translation>A change is told apart from none where it is larger than the expanded uncertainty (k = 2) of a difference of two readings, which stands under “told apart from”. The mean of many notes is held against the same figure: what a gauge has wrong, it has wrong on every note alike.</translation>
    </message>
    <message>
        <source>No reading that is inside its limits lies so near to one that the doubt of the measuring could put it outside.</source>
        <translation>No reading that is inside its limits lies so near to one that the doubt of the measuring could put it outside.</translation>
    </message>
    <message>
        <source>Readings that are inside their limits, but nearer to one than the doubt of the measuring (gauge, people, reading off): %1.</source>
        <translation>Readings that are inside their limits, but nearer to one than the doubt of the measuring (gauge, people, reading off): %1.</translation>
    </message>
    <message>
        <source>step</source>
        <translation>step</translation>
    </message>
    <message>
        <source>Looked at and accepted as they are, with the reason: %1.</source>
        <translation>Looked at and accepted as they are, with the reason: %1.</translation>
    </message>
    <message>
        <source>notes and values</source>
        <translation>notes and values</translation>
    </message>
    <message>
        <source>read
again</source>
        <translation>read
again</translation>
    </message>
    <message>
        <source>out of
limits</source>
        <translation>out of
limits</translation>
    </message>
    <message>
        <source>at most out
of all</source>
        <translation>at most out
of all</translation>
    </message>
    <message>
        <source>mean
difference</source>
        <translation>mean
difference</translation>
    </message>
    <message>
        <source>19 of 20 differences</source>
        <translation>19 of 20 differences</translation>
    </message>
    <message>
        <source>Read again by a second person</source>
        <translation>Read again by a second person</translation>
    </message>
    <message>
        <source>%1 read %2 notes again on %3, drawn at random (seed %4): %5.</source>
        <translation>%1 read %2 notes again on %3, drawn at random (seed %4): %5.</translation>
    </message>
    <message>
        <source>“At most out of all” holds with 95 % confidence for all notes that were read and are judged, and is worked out from the sample alone (hypergeometric). Differences are second reading less first; the range is their mean ± 1.96 standard deviations.</source>
        <translation>“At most out of all” holds with 95 % confidence for all notes that were read and are judged, and is worked out from the sample alone (hypergeometric). Differences are second reading less first; the range is their mean ± 1.96 standard deviations.</translation>
    </message>
    <message>
        <source>Owner: %1</source>
        <translation>Owner: %1</translation>
    </message>
    <message>
        <source>Name and place of the workshop are not stated.</source>
        <translation>Name and place of the workshop are not stated.</translation>
    </message>
    <message>
        <source>Workshop: %1. It was measured there, unless a remark on the readings names another place.</source>
        <translation>Workshop: %1. It was measured there, unless a remark on the readings names another place.</translation>
    </message>
    <message>
        <source>The workshop answers for the readings and for what it did. Maker, serial number, year and history are as they were read off the instrument or told by its owner. Of the gauges this record states what the workshop states of them; it claims no calibration of theirs. It counts as a whole: a page on its own is no record.</source>
        <translation>The workshop answers for the readings and for what it did. Maker, serial number, year and history are as they were read off the instrument or told by its owner. Of the gauges this record states what the workshop states of them; it claims no calibration of theirs. It counts as a whole: a page on its own is no record.</translation>
    </message>
    <message>
        <source>Accepted on %1</source>
        <translation>Accepted on %1</translation>
    </message>
    <message>
        <source>Accepted in an earlier pass and not mended since</source>
        <translation>Accepted in an earlier pass and not mended since</translation>
    </message>
    <message>
        <source>in which pass, by whom, when</source>
        <translation>in which pass, by whom, when</translation>
    </message>
    <message>
        <source>Each value is the one that was accepted; the arrow leads to the newest reading since, where there is one.</source>
        <translation>Each value is the one that was accepted; the arrow leads to the newest reading since, where there is one.</translation>
    </message>
    <message>
        <source>mended since</source>
        <translation>mended since</translation>
    </message>
    <message>
        <source>accepted again in a later pass</source>
        <translation>accepted again in a later pass</translation>
    </message>
    <message>
        <source>Accepted in an earlier pass and settled since</source>
        <translation>Accepted in an earlier pass and settled since</translation>
    </message>
    <message>
        <source>since then</source>
        <translation>since then</translation>
    </message>
    <message>
        <source>Looked at and accepted, with the reason: %1, of these %2 in an earlier pass.</source>
        <translation>Looked at and accepted, with the reason: %1, of these %2 in an earlier pass.</translation>
    </message>
    <message>
        <source>%1 It speaks of the instrument on the day it was measured and of no other day. The readings stand inside this document as files: record.json and readings.csv%2.</source>
        <translation>%1 It speaks of the instrument on the day it was measured and of no other day. The readings stand inside this document as files: record.json and readings.csv%2.</translation>
    </message>
    <message>
        <source>Issued on %1 with Hammerline %2; by whom is not stated.</source>
        <translation>Issued on %1 with Hammerline %2; by whom is not stated.</translation>
    </message>
    <message>
        <source>Issued on %1 by %2 with Hammerline %3.</source>
        <translation>Issued on %1 by %2 with Hammerline %3.</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>accepted</translation>
    </message>
    <message>
        <source>Renewed: %1 and more.</source>
        <translation>Renewed: %1 and more.</translation>
    </message>
    <message>
        <source>number %1</source>
        <translation>number %1</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>%1; changed by %2</source>
        <translation>%1; changed by %2</translation>
    </message>
    <message>
        <source>The one note read is not out</source>
        <translation>The one note read is not out</translation>
    </message>
    <message>
        <source>The one note read is out: too large</source>
        <translation>The one note read is out: too large</translation>
    </message>
    <message>
        <source>The one note read is out: too small</source>
        <translation>The one note read is out: too small</translation>
    </message>
    <message>
        <source>1 of %1 notes read is out: too large</source>
        <translation>1 of %1 notes read is out: too large</translation>
    </message>
    <message>
        <source>1 of %1 notes read is out: too small</source>
        <translation>1 of %1 notes read is out: too small</translation>
    </message>
    <message>
        <source>None of %1 notes read is out</source>
        <translation>None of %1 notes read is out</translation>
    </message>
    <message>
        <source>%1 of %2 notes read are out: %3 too large, %4 too small</source>
        <translation>%1 of %2 notes read are out: %3 too large, %4 too small</translation>
    </message>
    <message>
        <source>; %1 close to a limit</source>
        <translation>; %1 close to a limit</translation>
    </message>
    <message>
        <source>How far from its target is %1?</source>
        <translation>How far from its target is %1?</translation>
    </message>
    <message>
        <source>How widely is %1 spread?</source>
        <translation>How widely is %1 spread?</translation>
    </message>
    <message>
        <source>Where along the keyboard is %1 outside its limits?</source>
        <translation>Where along the keyboard is %1 outside its limits?</translation>
    </message>
    <message>
        <source>How does %1 run along the keyboard?</source>
        <translation>How does %1 run along the keyboard?</translation>
    </message>
    <message>
        <source>Nothing read yet</source>
        <translation>Nothing read yet</translation>
    </message>
    <message>
        <source>Notes read: %1, none judged</source>
        <translation>Notes read: %1, none judged</translation>
    </message>
    <message>
        <source>; %1 not read</source>
        <translation>; %1 not read</translation>
    </message>
    <message>
        <source>The chart could not be written to %1: %2. Nothing was changed there; choose another folder or make room and try again.</source>
        <translation>The chart could not be written to %1: %2. Nothing was changed there; choose another folder or make room and try again.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>%1, within</source>
        <translation>%1, within</translation>
    </message>
    <message>
        <source>close to a limit</source>
        <translation>close to a limit</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>too large</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>too small</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>not judged</translation>
    </message>
    <message>
        <source>limits and target of naturals</source>
        <translation>limits and target of naturals</translation>
    </message>
    <message>
        <source>limits and target</source>
        <translation>limits and target</translation>
    </message>
    <message>
        <source>of sharps</source>
        <translation>of sharps</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Now</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Before</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, from target</source>
        <translation>%1, from target</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>inside on every note</source>
        <translation>inside on every note</translation>
    </message>
</context>
<context>
    <name>keyboard_strip</name>
    <message>
        <source>within</source>
        <translation>within</translation>
    </message>
    <message>
        <source>close to a limit</source>
        <translation>close to a limit</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>too large</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>too small</translation>
    </message>
    <message>
        <source>off the scale</source>
        <translation>off the scale</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>not read</translation>
    </message>
    <message>
        <source>before</source>
        <translation>before</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>planned</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>uneven</translation>
    </message>
    <message>
        <source>concession</source>
        <translation>concession</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confirmed</translation>
    </message>
    <message>
        <source>fault of the key</source>
        <translation>fault of the key</translation>
    </message>
    <message>
        <source> Also out: %1.</source>
        <translation> Also out: %1.</translation>
    </message>
    <message>
        <source>Worst of all quantities</source>
        <translation>Worst of all quantities</translation>
    </message>
</context>
<context>
    <name>wording</name>
    <message>
        <source>%1; out, but within the gauge&apos;s doubt</source>
        <translation>%1; out, but within the gauge&apos;s doubt</translation>
    </message>
    <message>
        <source>Key height</source>
        <translation>Key height</translation>
    </message>
    <message>
        <source>height</source>
        <translation>height</translation>
    </message>
    <message>
        <source>Top of the key at rest, above the key bed or the workshop's own reference line.</source>
        <translation>Top of the key at rest, above the key bed or the workshop's own reference line.</translation>
    </message>
    <message>
        <source>Blow</source>
        <translation>Blow</translation>
    </message>
    <message>
        <source>blow</source>
        <translation>blow</translation>
    </message>
    <message>
        <source>From the crown of the hammer at rest to the string.</source>
        <translation>From the crown of the hammer at rest to the string.</translation>
    </message>
    <message>
        <source>Lost motion</source>
        <translation>Lost motion</translation>
    </message>
    <message>
        <source>lost mot.</source>
        <translation>lost mot.</translation>
    </message>
    <message>
        <source>Travel of the key at its front before the hammer moves.</source>
        <translation>Travel of the key at its front before the hammer moves.</translation>
    </message>
    <message>
        <source>Let-off</source>
        <translation>Let-off</translation>
    </message>
    <message>
        <source>let-off</source>
        <translation>let-off</translation>
    </message>
    <message>
        <source>From the crown of the hammer to the string at the point where it escapes, key moved very slowly.</source>
        <translation>From the crown of the hammer to the string at the point where it escapes, key moved very slowly.</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Drop</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>drop</translation>
    </message>
    <message>
        <source>How far the hammer falls below the let-off point, key held down after a slow stroke.</source>
        <translation>How far the hammer falls below the let-off point, key held down after a slow stroke.</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Dip</translation>
    </message>
    <message>
        <source>dip</source>
        <translation>dip</translation>
    </message>
    <message>
        <source>Travel of the key at its front edge from rest to the bottom.</source>
        <translation>Travel of the key at its front edge from rest to the bottom.</translation>
    </message>
    <message>
        <source>Aftertouch</source>
        <translation>Aftertouch</translation>
    </message>
    <message>
        <source>aftertch.</source>
        <translation>aftertch.</translation>
    </message>
    <message>
        <source>Travel of the key at its front from let-off to the bottom.</source>
        <translation>Travel of the key at its front from let-off to the bottom.</translation>
    </message>
    <message>
        <source>Checking</source>
        <translation>Checking</translation>
    </message>
    <message>
        <source>checking</source>
        <translation>checking</translation>
    </message>
    <message>
        <source>From the crown of the caught hammer to the string.</source>
        <translation>From the crown of the caught hammer to the string.</translation>
    </message>
    <message>
        <source>Damper start</source>
        <translation>Damper start</translation>
    </message>
    <message>
        <source>dampers</source>
        <translation>dampers</translation>
    </message>
    <message>
        <source>Travel of the hammer from rest at which the damper starts to move.</source>
        <translation>Travel of the hammer from rest at which the damper starts to move.</translation>
    </message>
    <message>
        <source>Down weight</source>
        <translation>Down weight</translation>
    </message>
    <message>
        <source>down wt</source>
        <translation>down wt</translation>
    </message>
    <message>
        <source>Mass at the front of the key that just lowers it slowly, dampers off.</source>
        <translation>Mass at the front of the key that just lowers it slowly, dampers off.</translation>
    </message>
    <message>
        <source>Up weight</source>
        <translation>Up weight</translation>
    </message>
    <message>
        <source>up wt</source>
        <translation>up wt</translation>
    </message>
    <message>
        <source>Mass at the front of the key that the key just raises, dampers off.</source>
        <translation>Mass at the front of the key that the key just raises, dampers off.</translation>
    </message>
    <message>
        <source>Vertical</source>
        <translation>Vertical</translation>
    </message>
    <message>
        <source>Grand</source>
        <translation>Grand</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>As found</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Setting</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>As left</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Recheck</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Taken in</translation>
    </message>
    <message>
        <source>In work</source>
        <translation>In work</translation>
    </message>
    <message>
        <source>In review</source>
        <translation>In review</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Signed off</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Delivered</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Within limits</translation>
    </message>
    <message>
        <source>Close to a limit</source>
        <translation>Close to a limit</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Out</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Not read</translation>
    </message>
    <message>
        <source>Not judged</source>
        <translation>Not judged</translation>
    </message>
    <message>
        <source>Limits as they stand</source>
        <translation>Limits as they stand</translation>
    </message>
    <message>
        <source>Limits drawn in by the gauge's uncertainty</source>
        <translation>Limits drawn in by the gauge's uncertainty</translation>
    </message>
    <message>
        <source>At the front edge</source>
        <translation>At the front edge</translation>
    </message>
    <message>
        <source>13 mm behind the front edge</source>
        <translation>13 mm behind the front edge</translation>
    </message>
    <message>
        <source>Over the front pin</source>
        <translation>Over the front pin</translation>
    </message>
    <message>
        <source>Below the let-off point</source>
        <translation>Below the let-off point</translation>
    </message>
    <message>
        <source>From the string</source>
        <translation>From the string</translation>
    </message>
    <message>
        <source>%1 %2; a little %3</source>
        <translation>%1 %2; a little %3</translation>
    </message>
    <message>
        <source>%1 %2; %3</source>
        <translation>%1 %2; %3</translation>
    </message>
    <message>
        <source>On target, but the limits are too narrow for this gauge to be sure</source>
        <translation>On target, but the limits are too narrow for this gauge to be sure</translation>
    </message>
    <message>
        <source>On target</source>
        <translation>On target</translation>
    </message>
    <message>
        <source>%1 above target</source>
        <translation>%1 above target</translation>
    </message>
    <message>
        <source>%1 below target</source>
        <translation>%1 below target</translation>
    </message>
    <message>
        <source>%1, in, but within the gauge&apos;s doubt</source>
        <translation>%1, in, but within the gauge&apos;s doubt</translation>
    </message>
    <message>
        <source>Doubt: %1 either way, %2 % of its variance from how finely it was read off</source>
        <translation>Doubt: %1 either way, %2 % of its variance from how finely it was read off</translation>
    </message>
    <message>
        <source>%1; truly inside with a probability of %2.</source>
        <translation>%1; truly inside with a probability of %2.</translation>
    </message>
    <message>
        <source>less than 1 %</source>
        <translation>less than 1 %</translation>
    </message>
    <message>
        <source>more than 99 %</source>
        <translation>more than 99 %</translation>
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
        <translation>%1; too close to the limit for this gauge to be sure</translation>
    </message>
    <message>
        <source>%1, within limits</source>
        <translation>%1, within limits</translation>
    </message>
    <message>
        <source>Not read yet</source>
        <translation>Not read yet</translation>
    </message>
    <message>
        <source>Not judged by this set</source>
        <translation>Not judged by this set</translation>
    </message>
    <message>
        <source>uneven</source>
        <translation>uneven</translation>
    </message>
    <message>
        <source>uneven, a step of %1 from the note below</source>
        <translation>uneven, a step of %1 from the note below</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 %3 (mean of %4 takes)</source>
        <translation>%1, %2 %3 (mean of %4 takes)</translation>
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
        <translation>%1 to %2, target %3</translation>
    </message>
    <message>
        <source>at least %1, target %2</source>
        <translation>at least %1, target %2</translation>
    </message>
    <message>
        <source>at most %1, target %2</source>
        <translation>at most %1, target %2</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>target %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 Set: %2.</source>
        <translation>%1 Set: %2.</translation>
    </message>
    <message>
        <source>too low</source>
        <translation>too low</translation>
    </message>
    <message>
        <source>too high</source>
        <translation>too high</translation>
    </message>
    <message>
        <source>higher</source>
        <translation>higher</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>lower</translation>
    </message>
    <message>
        <source>too close to the string</source>
        <translation>too close to the string</translation>
    </message>
    <message>
        <source>too far from the string</source>
        <translation>too far from the string</translation>
    </message>
    <message>
        <source>further off</source>
        <translation>further off</translation>
    </message>
    <message>
        <source>closer</source>
        <translation>closer</translation>
    </message>
    <message>
        <source>too little play</source>
        <translation>too little play</translation>
    </message>
    <message>
        <source>too much play</source>
        <translation>too much play</translation>
    </message>
    <message>
        <source>more</source>
        <translation>more</translation>
    </message>
    <message>
        <source>less</source>
        <translation>less</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation>earlier</translation>
    </message>
    <message>
        <source>later</source>
        <translation>later</translation>
    </message>
    <message>
        <source>too small a drop</source>
        <translation>too small a drop</translation>
    </message>
    <message>
        <source>too deep a drop</source>
        <translation>too deep a drop</translation>
    </message>
    <message>
        <source>too shallow</source>
        <translation>too shallow</translation>
    </message>
    <message>
        <source>too deep</source>
        <translation>too deep</translation>
    </message>
    <message>
        <source>deeper</source>
        <translation>deeper</translation>
    </message>
    <message>
        <source>shallower</source>
        <translation>shallower</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>too little</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>too much</translation>
    </message>
    <message>
        <source>caught too close to the string</source>
        <translation>caught too close to the string</translation>
    </message>
    <message>
        <source>caught too far from the string</source>
        <translation>caught too far from the string</translation>
    </message>
    <message>
        <source>too early</source>
        <translation>too early</translation>
    </message>
    <message>
        <source>too late</source>
        <translation>too late</translation>
    </message>
    <message>
        <source>too light</source>
        <translation>too light</translation>
    </message>
    <message>
        <source>too heavy</source>
        <translation>too heavy</translation>
    </message>
    <message>
        <source>heavier</source>
        <translation>heavier</translation>
    </message>
    <message>
        <source>lighter</source>
        <translation>lighter</translation>
    </message>
    <message>
        <source>too weak a return</source>
        <translation>too weak a return</translation>
    </message>
    <message>
        <source>too strong a return</source>
        <translation>too strong a return</translation>
    </message>
    <message>
        <source>stronger</source>
        <translation>stronger</translation>
    </message>
    <message>
        <source>weaker</source>
        <translation>weaker</translation>
    </message>
    <message>
        <source>on target</source>
        <translation>on target</translation>
    </message>
</context>
<context>
    <name>trade</name>
    <message>
        <source>Limits and targets: no source.</source>
        <translation>Limits and targets: no source.</translation>
    </message>
    <message>
        <source>low bass</source>
        <translation>low bass</translation>
    </message>
    <message>
        <source>bass</source>
        <translation>bass</translation>
    </message>
    <message>
        <source>tenor</source>
        <translation>tenor</translation>
    </message>
    <message>
        <source>treble</source>
        <translation>treble</translation>
    </message>
    <message>
        <source>high treble</source>
        <translation>high treble</translation>
    </message>
    <message>
        <source>one covered string</source>
        <translation>one covered string</translation>
    </message>
    <message>
        <source>two covered strings</source>
        <translation>two covered strings</translation>
    </message>
    <message>
        <source>three covered strings</source>
        <translation>three covered strings</translation>
    </message>
    <message>
        <source>one plain string</source>
        <translation>one plain string</translation>
    </message>
    <message>
        <source>two plain strings</source>
        <translation>two plain strings</translation>
    </message>
    <message>
        <source>three plain strings</source>
        <translation>three plain strings</translation>
    </message>
    <message>
        <source>single wound</source>
        <translation>single wound</translation>
    </message>
    <message>
        <source>three plain</source>
        <translation>three plain</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation>wedge</translation>
    </message>
    <message>
        <source>split wedge</source>
        <translation>split wedge</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>flat</translation>
    </message>
    <message>
        <source>single flat</source>
        <translation>single flat</translation>
    </message>
    <message>
        <source>double flat</source>
        <translation>double flat</translation>
    </message>
    <message>
        <source>over the hammers</source>
        <translation>over the hammers</translation>
    </message>
    <message>
        <source>none</source>
        <translation>none</translation>
    </message>
    <message>
        <source>hammers</source>
        <translation>hammers</translation>
    </message>
    <message>
        <source>hammer heads</source>
        <translation>hammer heads</translation>
    </message>
    <message>
        <source>hammer shanks</source>
        <translation>hammer shanks</translation>
    </message>
    <message>
        <source>hammer flanges</source>
        <translation>hammer flanges</translation>
    </message>
    <message>
        <source>hammer butts</source>
        <translation>hammer butts</translation>
    </message>
    <message>
        <source>bridle straps</source>
        <translation>bridle straps</translation>
    </message>
    <message>
        <source>key coverings</source>
        <translation>key coverings</translation>
    </message>
    <message>
        <source>keys</source>
        <translation>keys</translation>
    </message>
    <message>
        <source>key frame</source>
        <translation>key frame</translation>
    </message>
    <message>
        <source>key bed</source>
        <translation>key bed</translation>
    </message>
    <message>
        <source>key bushings</source>
        <translation>key bushings</translation>
    </message>
    <message>
        <source>front rail punchings</source>
        <translation>front rail punchings</translation>
    </message>
    <message>
        <source>balance rail punchings</source>
        <translation>balance rail punchings</translation>
    </message>
    <message>
        <source>damper felts</source>
        <translation>damper felts</translation>
    </message>
    <message>
        <source>strings</source>
        <translation>strings</translation>
    </message>
    <message>
        <source>bass strings</source>
        <translation>bass strings</translation>
    </message>
    <message>
        <source>tuning pins</source>
        <translation>tuning pins</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>springs</translation>
    </message>
    <message>
        <source>repetition springs</source>
        <translation>repetition springs</translation>
    </message>
    <message>
        <source>wippens</source>
        <translation>wippens</translation>
    </message>
    <message>
        <source>jacks</source>
        <translation>jacks</translation>
    </message>
    <message>
        <source>let-off buttons</source>
        <translation>let-off buttons</translation>
    </message>
    <message>
        <source>backchecks</source>
        <translation>backchecks</translation>
    </message>
    <message>
        <source>casters</source>
        <translation>casters</translation>
    </message>
    <message>
        <source>action</source>
        <translation>action</translation>
    </message>
    <message>
        <source>pedals</source>
        <translation>pedals</translation>
    </message>
    <message>
        <source>soundboard</source>
        <translation>soundboard</translation>
    </message>
    <message>
        <source>case</source>
        <translation>case</translation>
    </message>
    <message>
        <source>felt</source>
        <translation>felt</translation>
    </message>
    <message>
        <source>woven felt</source>
        <translation>woven felt</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>cloth</translation>
    </message>
    <message>
        <source>leather</source>
        <translation>leather</translation>
    </message>
    <message>
        <source>acrylic</source>
        <translation>acrylic</translation>
    </message>
    <message>
        <source>celluloid</source>
        <translation>celluloid</translation>
    </message>
    <message>
        <source>ivory</source>
        <translation>ivory</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>wood</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>steel</translation>
    </message>
    <message>
        <source>copper on steel</source>
        <translation>copper on steel</translation>
    </message>
    <message>
        <source>cotton</source>
        <translation>cotton</translation>
    </message>
    <message>
        <source>front</source>
        <translation>front</translation>
    </message>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>left side</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>right side</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>inside</translation>
    </message>
    <message>
        <source>blocking</source>
        <translation>blocking</translation>
    </message>
    <message>
        <source>double striking</source>
        <translation>double striking</translation>
    </message>
    <message>
        <source>bobbling</source>
        <translation>bobbling</translation>
    </message>
    <message>
        <source>sluggish return</source>
        <translation>sluggish return</translation>
    </message>
    <message>
        <source>click</source>
        <translation>click</translation>
    </message>
    <message>
        <source>Full-size upright, reference</source>
        <translation>Full-size upright, reference</translation>
    </message>
    <message>
        <source>Console or small upright, reference</source>
        <translation>Console or small upright, reference</translation>
    </message>
    <message>
        <source>Grand under 2 m, reference</source>
        <translation>Grand under 2 m, reference</translation>
    </message>
    <message>
        <source>Grand over 2 m, reference</source>
        <translation>Grand over 2 m, reference</translation>
    </message>
    <message>
        <source>Grand touch weights, reference</source>
        <translation>Grand touch weights, reference</translation>
    </message>
    <message>
        <source>Published figures, named at each point; "no source" where it is our own choice</source>
        <translation>Published figures, named at each point; "no source" where it is our own choice</translation>
    </message>
    <message>
        <source>A reference to start from, put together from published figures; it is nobody's specification.</source>
        <translation>A reference to start from, put together from published figures; it is nobody's specification.</translation>
    </message>
    <message>
        <source>The maker's own manual for the instrument outranks it, and so does the shop's own practice: copy the set and change it.</source>
        <translation>The maker's own manual for the instrument outranks it, and so does the shop's own practice: copy the set and change it.</translation>
    </message>
    <message>
        <source>For verticals of about 40 to 47 in (102 to 120 cm) whose action stands on the keys.</source>
        <translation>For verticals of about 40 to 47 in (102 to 120 cm) whose action stands on the keys.</translation>
    </message>
    <message>
        <source>No figures were found that are published for such instruments alone; all but the blow are those of the full-size set.</source>
        <translation>No figures were found that are published for such instruments alone; all but the blow are those of the full-size set.</translation>
    </message>
    <message>
        <source>For verticals of about 48 in (122 cm) and taller.</source>
        <translation>For verticals of about 48 in (122 cm) and taller.</translation>
    </message>
    <message>
        <source>For grands of 2 m and longer.</source>
        <translation>For grands of 2 m and longer.</translation>
    </message>
    <message>
        <source>For grands shorter than 2 m.</source>
        <translation>For grands shorter than 2 m.</translation>
    </message>
    <message>
        <source>Where sources disagree it follows: for let-off the taper from 3 to 2 mm (S18), not one figure for all notes (S20, S62); for lost motion the least that can be felt (S22), not 1/16 in (S21); for checking 15 mm (S20), with the 3/4 in of British practice (S23) as the upper limit; for dip 3/8 to 7/16 in (S23, S24), not the 11.5 mm of S18, which contradicts its own inches.</source>
        <translation>Where sources disagree it follows: for let-off the taper from 3 to 2 mm (S18), not one figure for all notes (S20, S62); for lost motion the least that can be felt (S22), not 1/16 in (S21); for checking 15 mm (S20), with the 3/4 in of British practice (S23) as the upper limit; for dip 3/8 to 7/16 in (S23, S24), not the 11.5 mm of S18, which contradicts its own inches.</translation>
    </message>
    <message>
        <source>Where sources disagree it follows: for let-off the taper from bass to treble (S03) with 2 mm at the top (S81), not 3 mm throughout (S73); drop is taken below the let-off point (S01, S03), not from the string (S29, S40); for checking a fixed distance (S17, S36, S38), although one maker gives none (S39); for aftertouch .030 to .050 in (S32), not 1/8 in (S25).</source>
        <translation>Where sources disagree it follows: for let-off the taper from bass to treble (S03) with 2 mm at the top (S81), not 3 mm throughout (S73); drop is taken below the let-off point (S01, S03), not from the string (S29, S40); for checking a fixed distance (S17, S36, S38), although one maker gives none (S39); for aftertouch .030 to .050 in (S32), not 1/8 in (S25).</translation>
    </message>
    <message>
        <source>Instruments with a silencing rail need more let-off than this set allows; their maker's figure applies.</source>
        <translation>Instruments with a silencing rail need more let-off than this set allows; their maker's figure applies.</translation>
    </message>
    <message>
        <source>Dip is meant at the front edge of the key.</source>
        <translation>Dip is meant at the front edge of the key.</translation>
    </message>
    <message>
        <source>Actions of another design, such as one without aftertouch (S04), need their maker's figures.</source>
        <translation>Actions of another design, such as one without aftertouch (S04), need their maker's figures.</translation>
    </message>
    <message>
        <source>Key height is not judged, because published figures start from different places.</source>
        <translation>Key height is not judged, because published figures start from different places.</translation>
    </message>
    <message>
        <source>Damper timing is not judged, because the top notes have no dampers; half of the blow is the usual figure.</source>
        <translation>Damper timing is not judged, because the top notes have no dampers; half of the blow is the usual figure.</translation>
    </message>
    <message>
        <source>Touch weights are judged by a set of their own.</source>
        <translation>Touch weights are judged by a set of their own.</translation>
    </message>
    <message>
        <source>It judges nothing but down weight and up weight, taken at the front of the key with the dampers lifted.</source>
        <translation>It judges nothing but down weight and up weight, taken at the front of the key with the dampers lifted.</translation>
    </message>
    <message>
        <source>It follows one series of articles (S41), whose figures fall from bass to treble; others give one figure for all notes (S66, S67, S90), and what players like lies wider apart (S65).</source>
        <translation>It follows one series of articles (S41), whose figures fall from bass to treble; others give one figure for all notes (S66, S67, S90), and what players like lies wider apart (S65).</translation>
    </message>
    <message>
        <source>Friction is half of down weight minus up weight, balance weight half of their sum; both are worked out, never judged.</source>
        <translation>Friction is half of down weight minus up weight, balance weight half of their sum; both are worked out, never judged.</translation>
    </message>
    <message>
        <source>.030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32)</source>
        <translation>.030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32)</translation>
    </message>
    <message>
        <source>.030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) (of grands)</source>
        <translation>.030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) (of grands)</translation>
    </message>
    <message>
        <source>.045 in, F. Sturm / M. Cramer, Drop, CAUT list, Jun 2004 (S31)</source>
        <translation>.045 in, F. Sturm / M. Cramer, Drop, CAUT list, Jun 2004 (S31)</translation>
    </message>
    <message>
        <source>.050 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) and B. Ballard, Steinway regulation, Pianotech list, May 1999 (S33)</source>
        <translation>.050 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) and B. Ballard, Steinway regulation, Pianotech list, May 1999 (S33)</translation>
    </message>
    <message>
        <source>.050 in, N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</source>
        <translation>.050 in, N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</translation>
    </message>
    <message>
        <source>.420 in, D. Skolnik, Pianotech list, Mar 2008 (S06)</source>
        <translation>.420 in, D. Skolnik, Pianotech list, Mar 2008 (S06)</translation>
    </message>
    <message>
        <source>1 3/4 in, J. Page, Mechanical Music Digest 2003.01.20.11 (S21) and R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</source>
        <translation>1 3/4 in, J. Page, Mechanical Music Digest 2003.01.20.11 (S21) and R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</translation>
    </message>
    <message>
        <source>1 7/8 in, Steinway &amp; Sons, grand technical guide (S01)</source>
        <translation>1 7/8 in, Steinway &amp; Sons, grand technical guide (S01)</translation>
    </message>
    <message>
        <source>1/16 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</source>
        <translation>1/16 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</translation>
    </message>
    <message>
        <source>1/16 in, Steinway &amp; Sons, grand technical guide (S01) and QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</source>
        <translation>1/16 in, Steinway &amp; Sons, grand technical guide (S01) and QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</translation>
    </message>
    <message>
        <source>1/8 in, Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)</source>
        <translation>1/8 in, Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)</translation>
    </message>
    <message>
        <source>1/8 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</source>
        <translation>1/8 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)</translation>
    </message>
    <message>
        <source>7/16 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23) and R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</source>
        <translation>7/16 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23) and R. Friedman, Mechanical Music Digest 2011.02.09.11 (S24)</translation>
    </message>
    <message>
        <source>H. Beckett, Simplifying the Secrets of Upright Aftertouch, proptn.org, Mar 2022 (S76)</source>
        <translation>H. Beckett, Simplifying the Secrets of Upright Aftertouch, proptn.org, Mar 2022 (S76)</translation>
    </message>
    <message>
        <source>J. Rappaport via A. Todd, Backcheck height, Pianotech list, May 2003 (S38)</source>
        <translation>J. Rappaport via A. Todd, Backcheck height, Pianotech list, May 2003 (S38)</translation>
    </message>
    <message>
        <source>Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)</source>
        <translation>Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)</translation>
    </message>
    <message>
        <source>N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</source>
        <translation>N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</translation>
    </message>
    <message>
        <source>Piano Cloud (Miki), regulating an upright, Apr 2020 (S12)</source>
        <translation>Piano Cloud (Miki), regulating an upright, Apr 2020 (S12)</translation>
    </message>
    <message>
        <source>Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)</source>
        <translation>Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)</translation>
    </message>
    <message>
        <source>R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05)</source>
        <translation>R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05)</translation>
    </message>
    <message>
        <source>R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05) and R. Brekne, dip gauge thread, Pianotech list, Feb 2009 (S09)</source>
        <translation>R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05) and R. Brekne, dip gauge thread, Pianotech list, Feb 2009 (S09)</translation>
    </message>
    <message>
        <source>R. Brekne, dip gauge thread, Pianotech list, Feb 2009 (S09)</source>
        <translation>R. Brekne, dip gauge thread, Pianotech list, Feb 2009 (S09)</translation>
    </message>
    <message>
        <source>down weight less 25 to 30 g, the middle, Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)</source>
        <translation>down weight less 25 to 30 g, the middle, Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>no source</translation>
    </message>
    <message>
        <source>no source; between the 2 mm of S30 and the 1/8 in of S03</source>
        <translation>no source; between the 2 mm of S30 and the 1/8 in of S03</translation>
    </message>
    <message>
        <source>no source; sharps are set from their aftertouch (S30)</source>
        <translation>no source; sharps are set from their aftertouch (S30)</translation>
    </message>
    <message>
        <source>none at all is the least there can be; R. Waring, Mechanical Music Digest 2003.01.20.10 (S22) wants &quot;just the tiniest amount&quot;</source>
        <translation>none at all is the least there can be; R. Waring, Mechanical Music Digest 2003.01.20.10 (S22) wants &quot;just the tiniest amount&quot;</translation>
    </message>
    <message>
        <source>pianotuner.jp, upright regulation order and dimensions (S10) and N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</source>
        <translation>pianotuner.jp, upright regulation order and dimensions (S10) and N. Hunt, Improving Upright Dynamics &amp; Repetition, Pianotech list, Mar 1998 (S18)</translation>
    </message>
    <message>
        <source>pianotuner.jp, upright regulation order and dimensions (S10) and R. Waring, Mechanical Music Digest 2003.01.20.10 (S22)</source>
        <translation>pianotuner.jp, upright regulation order and dimensions (S10) and R. Waring, Mechanical Music Digest 2003.01.20.10 (S22)</translation>
    </message>
    <message>
        <source>posted as &apos;antares&apos;, Backchecking Height, Pianotech list, May 2003 (S36)</source>
        <translation>posted as &apos;antares&apos;, Backchecking Height, Pianotech list, May 2003 (S36)</translation>
    </message>
    <message>
        <source>the +/- 0.2 mm about the target of R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05), used between neighbours (that use: no source)</source>
        <translation>the +/- 0.2 mm about the target of R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05), used between neighbours (that use: no source)</translation>
    </message>
    <message>
        <source>the middle of 44 to 48 mm, R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05)</source>
        <translation>the middle of 44 to 48 mm, R. Brekne quoting six makers&apos; manuals, Pianotech list, Oct 2002 (S05)</translation>
    </message>
    <message>
        <source>wus-piano.com, grand aftertouch (S81)</source>
        <translation>wus-piano.com, grand aftertouch (S81)</translation>
    </message>
    <message>
        <source>3/4 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23)</source>
        <translation>3/4 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23)</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>common practice</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>common practice, no source</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>from memory</translation>
    </message>
</context>
</TS>
