#include "record_pdf/inside/trade_words.h"

#include "record_pdf/inside/record_words.h"

#include "wording/wording.h"

#include <QRegularExpression>

#include <map>

namespace hammerline::record_pdf {

namespace {

/// Marked for lupdate; looked up by what was typed.
[[maybe_unused]] constexpr const char *ofTheTrade[] = {
    // Sections
    QT_TRANSLATE_NOOP("trade", "low bass"),
    QT_TRANSLATE_NOOP("trade", "bass"),
    QT_TRANSLATE_NOOP("trade", "tenor"),
    QT_TRANSLATE_NOOP("trade", "treble"),
    QT_TRANSLATE_NOOP("trade", "high treble"),
    // Stringing
    QT_TRANSLATE_NOOP("trade", "one covered string"),
    QT_TRANSLATE_NOOP("trade", "two covered strings"),
    QT_TRANSLATE_NOOP("trade", "three covered strings"),
    QT_TRANSLATE_NOOP("trade", "one plain string"),
    QT_TRANSLATE_NOOP("trade", "two plain strings"),
    QT_TRANSLATE_NOOP("trade", "three plain strings"),
    QT_TRANSLATE_NOOP("trade", "single wound"),
    QT_TRANSLATE_NOOP("trade", "three plain"),
    // Dampers
    QT_TRANSLATE_NOOP("trade", "wedge"),
    QT_TRANSLATE_NOOP("trade", "split wedge"),
    QT_TRANSLATE_NOOP("trade", "flat"),
    QT_TRANSLATE_NOOP("trade", "single flat"),
    QT_TRANSLATE_NOOP("trade", "double flat"),
    QT_TRANSLATE_NOOP("trade", "over the hammers"),
    QT_TRANSLATE_NOOP("trade", "none"),
    // Parts
    QT_TRANSLATE_NOOP("trade", "hammers"),
    QT_TRANSLATE_NOOP("trade", "hammer heads"),
    QT_TRANSLATE_NOOP("trade", "hammer shanks"),
    QT_TRANSLATE_NOOP("trade", "hammer flanges"),
    QT_TRANSLATE_NOOP("trade", "hammer butts"),
    QT_TRANSLATE_NOOP("trade", "bridle straps"),
    QT_TRANSLATE_NOOP("trade", "key coverings"),
    QT_TRANSLATE_NOOP("trade", "keys"),
    QT_TRANSLATE_NOOP("trade", "key frame"),
    QT_TRANSLATE_NOOP("trade", "key bed"),
    QT_TRANSLATE_NOOP("trade", "key bushings"),
    QT_TRANSLATE_NOOP("trade", "front rail punchings"),
    QT_TRANSLATE_NOOP("trade", "balance rail punchings"),
    QT_TRANSLATE_NOOP("trade", "damper felts"),
    QT_TRANSLATE_NOOP("trade", "strings"),
    QT_TRANSLATE_NOOP("trade", "bass strings"),
    QT_TRANSLATE_NOOP("trade", "tuning pins"),
    QT_TRANSLATE_NOOP("trade", "springs"),
    QT_TRANSLATE_NOOP("trade", "repetition springs"),
    QT_TRANSLATE_NOOP("trade", "wippens"),
    QT_TRANSLATE_NOOP("trade", "jacks"),
    QT_TRANSLATE_NOOP("trade", "let-off buttons"),
    QT_TRANSLATE_NOOP("trade", "backchecks"),
    QT_TRANSLATE_NOOP("trade", "casters"),
    QT_TRANSLATE_NOOP("trade", "action"),
    QT_TRANSLATE_NOOP("trade", "pedals"),
    QT_TRANSLATE_NOOP("trade", "soundboard"),
    QT_TRANSLATE_NOOP("trade", "case"),
    // Materials
    QT_TRANSLATE_NOOP("trade", "felt"),
    QT_TRANSLATE_NOOP("trade", "woven felt"),
    QT_TRANSLATE_NOOP("trade", "cloth"),
    QT_TRANSLATE_NOOP("trade", "leather"),
    QT_TRANSLATE_NOOP("trade", "acrylic"),
    QT_TRANSLATE_NOOP("trade", "celluloid"),
    QT_TRANSLATE_NOOP("trade", "ivory"),
    QT_TRANSLATE_NOOP("trade", "wood"),
    QT_TRANSLATE_NOOP("trade", "steel"),
    QT_TRANSLATE_NOOP("trade", "copper on steel"),
    QT_TRANSLATE_NOOP("trade", "cotton"),
    // Views of photographs
    QT_TRANSLATE_NOOP("trade", "front"),
    QT_TRANSLATE_NOOP("trade", "back"),
    QT_TRANSLATE_NOOP("trade", "left side"),
    QT_TRANSLATE_NOOP("trade", "right side"),
    QT_TRANSLATE_NOOP("trade", "inside"),
    // Faults that are felt
    QT_TRANSLATE_NOOP("trade", "blocking"),
    QT_TRANSLATE_NOOP("trade", "double striking"),
    QT_TRANSLATE_NOOP("trade", "bobbling"),
    QT_TRANSLATE_NOOP("trade", "sluggish return"),
    QT_TRANSLATE_NOOP("trade", "click"),
    // The built-in tolerance sets
    QT_TRANSLATE_NOOP("trade", "Full-size upright, reference"),
    QT_TRANSLATE_NOOP("trade", "Console or small upright, reference"),
    QT_TRANSLATE_NOOP("trade", "Grand under 2 m, reference"),
    QT_TRANSLATE_NOOP("trade", "Grand over 2 m, reference"),
    QT_TRANSLATE_NOOP("trade", "Grand touch weights, reference"),
    QT_TRANSLATE_NOOP("trade", "Published figures, named at each point; \"no source\" where it is our own choice"),
    QT_TRANSLATE_NOOP("trade", "A reference to start from, put together from published figures; it is nobody's "
                               "specification."),
    QT_TRANSLATE_NOOP("trade", "The maker's own manual for the instrument outranks it, and so does the shop's own "
                               "practice: copy the set and change it."),
    QT_TRANSLATE_NOOP("trade", "For verticals of about 40 to 47 in (102 to 120 cm) whose action stands on the keys."),
    QT_TRANSLATE_NOOP("trade",
                      "No figures were found that are published for such instruments alone; all but the blow are "
                      "those of the full-size set."),
    QT_TRANSLATE_NOOP("trade", "For verticals of about 48 in (122 cm) and taller."),
    QT_TRANSLATE_NOOP("trade", "For grands of 2 m and longer."),
    QT_TRANSLATE_NOOP("trade", "For grands shorter than 2 m."),
    QT_TRANSLATE_NOOP("trade",
                      "Where sources disagree it follows: for let-off the taper from 3 to 2 mm (S18), not one "
                      "figure for all notes (S20, S62); for lost motion the least that can be felt (S22), not "
                      "1/16 in (S21); for checking 15 mm (S20), with the 3/4 in of British practice (S23) as the "
                      "upper limit; for dip 3/8 to 7/16 in (S23, S24), not the 11.5 mm of S18, which contradicts "
                      "its own inches."),
    QT_TRANSLATE_NOOP("trade",
                      "Where sources disagree it follows: for let-off the taper from bass to treble (S03) with 2 "
                      "mm at the top (S81), not 3 mm throughout (S73); drop is taken below the let-off point "
                      "(S01, S03), not from the string (S29, S40); for checking a fixed distance (S17, S36, S38),"
                      " although one maker gives none (S39); for aftertouch .030 to .050 in (S32), not 1/8 in "
                      "(S25)."),
    QT_TRANSLATE_NOOP("trade",
                      "Instruments with a silencing rail need more let-off than this set allows; their maker's "
                      "figure applies."),
    QT_TRANSLATE_NOOP("trade", "Dip is meant at the front edge of the key."),
    QT_TRANSLATE_NOOP("trade", "Actions of another design, such as one without aftertouch (S04), need their maker's "
                               "figures."),
    QT_TRANSLATE_NOOP("trade", "Key height is not judged, because published figures start from different places."),
    QT_TRANSLATE_NOOP("trade",
                      "Damper timing is not judged, because the top notes have no dampers; half of the blow is "
                      "the usual figure."),
    QT_TRANSLATE_NOOP("trade", "Touch weights are judged by a set of their own."),
    QT_TRANSLATE_NOOP("trade", "Limits and targets: no source."),
    QT_TRANSLATE_NOOP("trade",
                      "It judges nothing but down weight and up weight, taken at the front of the key with the "
                      "dampers lifted."),
    QT_TRANSLATE_NOOP("trade",
                      "It follows one series of articles (S41), whose figures fall from bass to treble; others "
                      "give one figure for all notes (S66, S67, S90), and what players like lies wider apart "
                      "(S65)."),
    QT_TRANSLATE_NOOP("trade",
                      "Friction is half of down weight minus up weight, balance weight half of their sum; both "
                      "are worked out, never judged."),
    // Sources of the built-in sets, figure by figure, where they say more than a title
    QT_TRANSLATE_NOOP("trade", ".030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32)"),
    QT_TRANSLATE_NOOP("trade",
                      ".030 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) (of grands)"),
    QT_TRANSLATE_NOOP("trade", ".045 in, F. Sturm / M. Cramer, Drop, CAUT list, Jun 2004 (S31)"),
    QT_TRANSLATE_NOOP("trade", ".050 in, E. Foote quoted in Keydip: METHOD, Pianotech list, Aug 1999 (S32) and B. "
                               "Ballard, Steinway regulation, Pianotech list, May 1999 (S33)"),
    QT_TRANSLATE_NOOP("trade",
                      ".050 in, N. Hunt, Improving Upright Dynamics & Repetition, Pianotech list, Mar 1998 (S18)"),
    QT_TRANSLATE_NOOP("trade", ".420 in, D. Skolnik, Pianotech list, Mar 2008 (S06)"),
    QT_TRANSLATE_NOOP("trade", "1 3/4 in, J. Page, Mechanical Music Digest 2003.01.20.11 (S21) and R. Friedman, "
                               "Mechanical Music Digest 2011.02.09.11 (S24)"),
    QT_TRANSLATE_NOOP("trade", "1 7/8 in, Steinway & Sons, grand technical guide (S01)"),
    QT_TRANSLATE_NOOP("trade", "1/16 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)"),
    QT_TRANSLATE_NOOP("trade", "1/16 in, Steinway & Sons, grand technical guide (S01) and QRS Music Technologies, "
                               "PNOmation II installation manual, p. 7, 2013 (S03)"),
    QT_TRANSLATE_NOOP("trade", "1/8 in, Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)"),
    QT_TRANSLATE_NOOP("trade", "1/8 in, QRS Music Technologies, PNOmation II installation manual, p. 7, 2013 (S03)"),
    QT_TRANSLATE_NOOP("trade", "7/16 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23) and R. Friedman, "
                               "Mechanical Music Digest 2011.02.09.11 (S24)"),
    QT_TRANSLATE_NOOP("trade", "H. Beckett, Simplifying the Secrets of Upright Aftertouch, proptn.org, Mar 2022 (S76)"),
    QT_TRANSLATE_NOOP("trade", "J. Rappaport via A. Todd, Backcheck height, Pianotech list, May 2003 (S38)"),
    QT_TRANSLATE_NOOP("trade", "Mechanical Music Digest 2010.02.15.07, upright regulation and wear (S20)"),
    QT_TRANSLATE_NOOP("trade", "N. Hunt, Improving Upright Dynamics & Repetition, Pianotech list, Mar 1998 (S18)"),
    QT_TRANSLATE_NOOP("trade", "Piano Cloud (Miki), regulating an upright, Apr 2020 (S12)"),
    QT_TRANSLATE_NOOP("trade", "Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)"),
    QT_TRANSLATE_NOOP("trade", "R. Brekne quoting six makers' manuals, Pianotech list, Oct 2002 (S05)"),
    QT_TRANSLATE_NOOP("trade", "R. Brekne quoting six makers' manuals, Pianotech list, Oct 2002 (S05) and R. Brekne, "
                               "dip gauge thread, Pianotech list, Feb 2009 (S09)"),
    QT_TRANSLATE_NOOP("trade", "R. Brekne, dip gauge thread, Pianotech list, Feb 2009 (S09)"),
    QT_TRANSLATE_NOOP(
        "trade",
        "down weight less 25 to 30 g, the middle, Piano Tuning Matters, Grand Regulation part XXV, Jul 2016 (S41)"),
    QT_TRANSLATE_NOOP("trade", "no source"),
    QT_TRANSLATE_NOOP("trade", "common practice"),
    QT_TRANSLATE_NOOP("trade", "common practice, no source"),
    QT_TRANSLATE_NOOP("trade", "from memory"),
    QT_TRANSLATE_NOOP("trade", "no source; between the 2 mm of S30 and the 1/8 in of S03"),
    QT_TRANSLATE_NOOP("trade", "no source; sharps are set from their aftertouch (S30)"),
    QT_TRANSLATE_NOOP("trade", "none at all is the least there can be; R. Waring, Mechanical Music Digest "
                               "2003.01.20.10 (S22) wants \"just the tiniest amount\""),
    QT_TRANSLATE_NOOP("trade", "pianotuner.jp, upright regulation order and dimensions (S10) and N. Hunt, Improving "
                               "Upright Dynamics & Repetition, Pianotech list, Mar 1998 (S18)"),
    QT_TRANSLATE_NOOP("trade", "pianotuner.jp, upright regulation order and dimensions (S10) and R. Waring, Mechanical "
                               "Music Digest 2003.01.20.10 (S22)"),
    QT_TRANSLATE_NOOP("trade", "posted as 'antares', Backchecking Height, Pianotech list, May 2003 (S36)"),
    QT_TRANSLATE_NOOP("trade", "the +/- 0.2 mm about the target of R. Brekne quoting six makers' manuals, Pianotech "
                               "list, Oct 2002 (S05), used between neighbours (that use: no source)"),
    QT_TRANSLATE_NOOP(
        "trade", "the middle of 44 to 48 mm, R. Brekne quoting six makers' manuals, Pianotech list, Oct 2002 (S05)"),
    QT_TRANSLATE_NOOP("trade", "wus-piano.com, grand aftertouch (S81)"),
    QT_TRANSLATE_NOOP("trade", "3/4 in, P. Handscombe, Mechanical Music Digest 2011.02.09.09 (S23)"),
};

QString lookedUp(const QString &text)
{
    return QCoreApplication::translate("trade", text.toUtf8().constData());
}

/// Sentence by sentence; empty where one is not known.
QString ofSentences(const QString &text)
{
    static const QRegularExpression between(QStringLiteral("(?<=\\.) (?=[A-Z])"));
    QStringList sentences = text.split(between);
    for (QString &sentence : sentences) {
        const QString known = lookedUp(sentence);
        if (known == sentence)
            return {};
        sentence = known;
    }
    return sentences.join(QLatin1Char(' '));
}

/// What tolerance/found_uncertainty.h writes into a source; empty for anything else.
QString ofFoundUncertainty(const QString &line)
{
    static const QRegularExpression form(QStringLiteral(
        "^Uncertainty of ([a-z-]+): ([0-9.]+ (?:mm|g)) \\(k = 2\\), from the gauge study of \"(.*)\", ([0-9-]+)\\.$"));
    const auto found = form.match(line);
    const QString id = found.captured(1).replace(QLatin1Char('-'), QLatin1Char('_'));
    const auto quantity = catalogue::findQuantity(id.toStdString());
    if (!quantity)
        return {};
    return Record::tr("%1: uncertainty %2 (k = 2), from the gauge study of \u201C%3\u201D, %4.")
        .arg(wording::nameOf(*quantity), found.captured(2), found.captured(3), found.captured(4));
}

/// Line by line.
std::string ofSetSource(const std::string &source)
{
    QStringList lines = fromCore(source).split(QLatin1Char('\n'));
    for (QString &line : lines) {
        const QString found = ofFoundUncertainty(line);
        line = found.isEmpty() ? tradeWords(line.toStdString()) : found;
    }
    return lines.join(QLatin1Char('\n')).toStdString();
}

/// "Full-size upright, reference (rule 3)": what it was made with, in brackets, stays.
std::string ofSetName(const std::string &name)
{
    const auto bracket = name.find(" (");
    if (bracket == std::string::npos)
        return tradeWords(name).toStdString();
    return tradeWords(name.substr(0, bracket)).toStdString() + name.substr(bracket);
}

} // namespace

QString tradeWords(const std::string &typed)
{
    const QString text = fromCore(typed);
    const QString known = lookedUp(text);
    if (known != text)
        return known;
    const QString sentences = ofSentences(text);
    return sentences.isEmpty() ? text : sentences;
}

QString sourceWords(const std::string &source)
{
    static const QRegularExpression label(QStringLiteral("(?:^|; )(low|target|high|step): "));
    const std::map<QString, QString> labels{{QStringLiteral("low"), Record::tr("lowest")},
                                            {QStringLiteral("target"), Record::tr("target")},
                                            {QStringLiteral("high"), Record::tr("highest")},
                                            {QStringLiteral("step"), Record::tr("step")}};
    const QString text = fromCore(source);
    QStringList figures;
    QString head;
    qsizetype from = 0;
    const auto put = [&](qsizetype end) {
        if (end > from || !head.isEmpty())
            figures << head + tradeWords(text.mid(from, end - from).toStdString());
    };
    for (auto found = label.globalMatch(text); found.hasNext();) {
        const auto next = found.next();
        put(next.capturedStart());
        head = labels.at(next.captured(1)) + QStringLiteral(": ");
        from = next.capturedEnd();
    }
    put(text.size());
    return figures.join(QStringLiteral("; "));
}

sale_record::SaleRecord inTradeWords(sale_record::SaleRecord record)
{
    const auto put = [](std::string &text) { text = paper::drawable(tradeWords(text)).toStdString(); };
    for (keyboard::Section &section : record.instrument.sections)
        put(section.name);
    for (auto *fittings : {&record.instrument.stringing, &record.instrument.dampers})
        for (instrument::Fitting &fitting : *fittings)
            put(fitting.kind);
    for (dossier::WorkEntry &entry : record.dossier.work) {
        put(entry.what);
        put(entry.material);
    }
    for (dossier::Photograph &photograph : record.dossier.photographs)
        put(photograph.view);
    for (sale_record::PassPart *part :
         {&record.asLeft, record.asFound ? &*record.asFound : nullptr, record.recheck ? &*record.recheck : nullptr})
        if (part != nullptr)
            for (sale_record::FeltFault &felt : part->felt)
                put(felt.fault);
    record.set.name = ofSetName(record.set.name);
    record.set.source = ofSetSource(record.set.source);
    put(record.set.remark);
    if (record.since)
        for (analysis::Drift &drift : record.since->changes)
            put(drift.section);
    return record;
}

} // namespace hammerline::record_pdf
