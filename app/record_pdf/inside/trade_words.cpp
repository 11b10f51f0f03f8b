#include "record_pdf/inside/trade_words.h"

#include "record_pdf/inside/record_words.h"

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
    QString text = fromCore(source);
    static const QRegularExpression label(QStringLiteral("(^|; )(low|target|high|step): "));
    const std::map<QString, QString> labels{{QStringLiteral("low"), Record::tr("lowest")},
                                            {QStringLiteral("target"), Record::tr("target")},
                                            {QStringLiteral("high"), Record::tr("highest")},
                                            {QStringLiteral("step"), Record::tr("step")}};
    for (auto found = label.match(text); found.hasMatch();) {
        const QString put = labels.at(found.captured(2));
        text.replace(found.capturedStart(2), found.capturedLength(2), put);
        found = label.match(text, found.capturedStart(2) + put.size());
    }
    return text.replace(QLatin1String("no source"), Record::tr("no source"));
}

sale_record::SaleRecord inTradeWords(sale_record::SaleRecord record)
{
    const auto put = [](std::string &text) { text = tradeWords(text).toStdString(); };
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
    for (sale_record::PassPart *part : {&record.asLeft, record.asFound ? &*record.asFound : nullptr})
        if (part != nullptr)
            for (sale_record::FeltFault &felt : part->felt)
                put(felt.fault);
    put(record.set.name);
    put(record.set.source);
    put(record.set.remark);
    if (record.since)
        for (analysis::Drift &drift : record.since->changes)
            put(drift.section);
    return record;
}

} // namespace hammerline::record_pdf
