// Page one, for a family: what stands before them, what was done to it, and in what state it leaves. One picture.

#include "paper/table.h"
#include "record_pdf/inside/pages.h"

#include "keyboard_strip/paint_strip.h"
#include "wording/wording.h"

#include <QPainter>

#include <algorithm>

namespace hammerline::record_pdf {

namespace {

constexpr TextStyle figureText{36, true, 0, 1.1};
constexpr TextStyle plainText{11, false, 0, 1.5};
constexpr TextStyle storyText{10, false, 0, 1.4};
constexpr TextStyle labelText{9, true, 0, 1.4};

/// As large as lets the name stand on `lines` lines; a name may be 200 characters long.
TextStyle nameStyle(const QString &name, double width, int lines)
{
    for (const int size : {30, 24, 18, 14}) {
        const TextStyle style{size, true, 0, 1.2};
        if (TextBlock(name, style, width).height() < (lines + 0.5) * size * style.leading)
            return style;
    }
    return {11, true, 0, 1.2};
}

/// The first as it leaves, else the first as it came; null picture: there is none.
QImage portraitOf(const sale_record::SaleRecord &record)
{
    const dossier::Photograph *chosen = nullptr;
    for (const dossier::Photograph &photograph : record.dossier.photographs)
        if (chosen == nullptr || photograph.moment > chosen->moment)
            chosen = &photograph;
    return chosen ? pictureOf(record, *chosen) : QImage();
}

void setBlock(Sheet &sheet, const QString &text, const TextStyle &style, double width)
{
    const TextBlock block(text, style, width);
    sheet.later([block, at = QPointF(sheet.body().left(), sheet.y())](QPainter &painter) { block.paint(painter, at); });
    sheet.skip(block.height() + style.size * 0.5);
}

/// What gives way where there is much to say.
struct FrontForm {
    double pictures = 1; ///< height of the pictures of the keyboard, in usual ones
    bool portrait = true;
};

void setTitle(Sheet &sheet, const Context &context, const FrontForm &form)
{
    const auto &record = context.record;
    const QImage portrait = form.portrait ? portraitOf(record) : QImage();
    constexpr QSizeF portraitSize(128, 96);
    const QRectF body = sheet.body();
    const double top = sheet.y();
    const double width = body.width() - (portrait.isNull() ? 0 : portraitSize.width() + 14);
    setBlock(sheet, Record::tr("Regulation record"), {12, false, 85, 1.3}, width);
    const QString name = fromCore(record.instrument.name);
    setBlock(sheet, name, nameStyle(name, width, portrait.isNull() ? 2 : 1), width);
    setBlock(sheet, describe(record.instrument, context.options.locale), {10, false, 51, 1.5}, width);
    if (!portrait.isNull()) {
        const QRectF place(QPointF(body.right() - portraitSize.width(), top), portraitSize);
        sheet.later([portrait, place](QPainter &painter) { paintPicture(painter, place, portrait); });
        sheet.skip(std::max(0.0, place.bottom() - sheet.y()));
    }
    sheet.skip(6);
    sheet.hairline();
    sheet.skip(14);
}

QString stateSentence(const Context &context)
{
    const auto &record = context.record;
    QString sentence = Record::tr("measures that this workshop promises are where they should be, as measured on %1.")
                           .arg(dayText(record.asLeft.pass.began, context.options.locale).replace(' ', QChar::Nbsp));
    if (context.hasBefore())
        sentence += QLatin1Char(' ') + Record::tr("When the instrument came in, %1 of %2 were.")
                                           .arg(sale_record::pairsInOf(*record.asFound))
                                           .arg(sale_record::judgedPairsOf(*record.asFound));
    return sentence;
}

/// The one figure of the page, with its sentence beside it.
void setFigure(Sheet &sheet, const Context &context)
{
    const auto &record = context.record;
    const QString figure = Record::tr("%1 of %2").arg(sale_record::pairsInOf(record.asLeft)).arg(record.judgedPairs());
    const double figureWidth = widthOf(figure, figureText) + 18;
    const TextBlock big(figure, figureText, figureWidth);
    const TextBlock sentence(stateSentence(context), plainText, sheet.body().width() - figureWidth);
    const QPointF at(sheet.body().left(), sheet.y());
    sheet.later([big, sentence, at, figureWidth](QPainter &painter) {
        big.paint(painter, at);
        sentence.paint(painter, at + QPointF(figureWidth, 0));
    });
    sheet.skip(std::max(big.height(), sentence.height()) + 12);
}

void setStrip(Sheet &sheet, const Context &context, const sale_record::PassPart &part, const QString &label,
              double pictures)
{
    keyboard_strip::StripSource source;
    source.compass = context.record.instrument.compass;
    source.sections = context.record.instrument.sections;
    source.now = &part.judgement;
    source.form = context.form;
    const auto model = keyboard_strip::modelOf(source);
    const auto style = keyboard_strip::printStyle(6);
    const double width = sheet.body().width();
    const double height = keyboard_strip::heightFor(style, source.compass, width) * pictures;
    sheet.paragraph(label, labelText);
    const QRectF rect(sheet.body().left(), sheet.y(), width, height);
    sheet.later([model, style, rect](QPainter &painter) { keyboard_strip::paintStrip(painter, rect, model, style); });
    sheet.skip(height + 8);
}

void setPicture(Sheet &sheet, const Context &context, double pictures)
{
    const auto &record = context.record;
    const QString named = QStringLiteral("%1, %2");
    const QLocale &locale = context.options.locale;
    if (context.hasBefore())
        setStrip(sheet, context, *record.asFound,
                 named.arg(context.foundName(), dayText(record.asFound->pass.began, locale)), pictures);
    setStrip(sheet, context, record.asLeft, named.arg(context.leftName(), dayText(record.asLeft.pass.began, locale)),
             pictures);
    sheet.paragraph(
        Record::tr("Each key carries a small gauge with its worst measure on it: inside the grey field it is where "
                   "it should be; above or below the field it is too large or too small. A broken outline was not "
                   "measured. A small step at a key's edge: the key differs much from its neighbour.") +
            QLatin1Char(' ') +
            Record::tr("Keys are named with their octave: C4 is middle C, A#4 the black key right above A4."),
        quietText);
    sheet.skip(4);
}

/// A word of warning where the newest readings are not those of a finished instrument.
QString stageSentence(readings::Purpose purpose)
{
    if (purpose == readings::Purpose::Setting)
        return Record::tr(" The work was not finished when these readings were taken.");
    if (purpose == readings::Purpose::AsFound)
        return Record::tr(" These readings show the instrument as it came; no work on it is recorded.");
    return {};
}

QString measuredSentence(const Context &context)
{
    const auto &record = context.record;
    const auto left = static_cast<int>(record.asLeft.readings.size());
    if (!context.hasBefore() && record.asLeft.pass.purpose == readings::Purpose::AsFound)
        return Record::tr("The action was measured key by key (%1 readings).").arg(left);
    if (!context.hasBefore())
        return Record::tr("The action was measured key by key (%1 readings). How it was before is not recorded.")
            .arg(left);
    int mended = 0;
    for (const auto &[quantity, change] : record.change)
        mended += change.mended.value_or(0);
    return Record::tr(
               "The action was measured key by key as it came (%1 readings), set, and measured again (%2 readings). "
               "%3 measures that were outside their limits came inside.")
        .arg(record.asFound->readings.size())
        .arg(left)
        .arg(mended);
}

constexpr qsizetype mostOfTheRenewed = 120;

/// Cut behind a word where it is longer than the renewed may be.
QString shortened(const QString &thing)
{
    if (thing.size() <= mostOfTheRenewed)
        return thing;
    const qsizetype blank = thing.lastIndexOf(QLatin1Char(' '), mostOfTheRenewed);
    return thing.left(blank > 0 ? blank : mostOfTheRenewed) + QStringLiteral("\u2026");
}

/// What was renewed, each thing once, as far as two lines go; the log of work has the rest.
QString renewedSentence(const Context &context)
{
    QStringList things;
    for (const dossier::WorkEntry &entry : context.record.dossier.work)
        if (entry.kind == dossier::WorkKind::PartsRenewed && !things.contains(fromCore(entry.what)))
            things << fromCore(entry.what);
    if (things.isEmpty())
        return {};
    QString told = shortened(things.takeFirst());
    while (!things.isEmpty() && told.size() + things.first().size() < mostOfTheRenewed)
        told += QStringLiteral(", ") + things.takeFirst();
    return QLatin1Char(' ') +
           (things.isEmpty() ? Record::tr("Renewed: %1.") : Record::tr("Renewed: %1 and more.")).arg(told);
}

QString workSentence(const Context &context)
{
    const auto &record = context.record;
    QString sentence = measuredSentence(context) + stageSentence(record.asLeft.pass.purpose) + renewedSentence(context);
    if (record.recheck)
        sentence += QLatin1Char(' ') + recheckSentence(context);
    if (!record.dossier.departures().empty())
        sentence += QLatin1Char(' ') + Record::tr("Parts of it are not as its maker built them: see what was done.");
    return sentence;
}

QString countOf(const sale_record::PassPart &part, catalogue::Quantity quantity)
{
    const auto found = part.summaries.find(quantity);
    if (found == part.summaries.end() || !found->second.judged || found->second.count == 0)
        return QStringLiteral("\u2013");
    return QString::number(found->second.out);
}

bool isJudged(const Context &context, catalogue::Quantity quantity)
{
    const auto found = context.record.asLeft.summaries.find(quantity);
    return found != context.record.asLeft.summaries.end() && found->second.judged;
}

std::vector<catalogue::Quantity> judgedQuantities(const Context &context)
{
    std::vector<catalogue::Quantity> judged;
    for (const catalogue::Quantity quantity : quantitiesOf(context.record))
        if (isJudged(context, quantity))
            judged.push_back(quantity);
    return judged;
}

/// `height`: what the table may take. Rows come closer together before the page overflows.
void setMeanings(Sheet &sheet, const Context &context, double height)
{
    const auto judged = judgedQuantities(context);
    const double rowHeight = (height - 24) / static_cast<double>(std::max<std::size_t>(judged.size(), 1));
    const TextStyle style{rowHeight < 12 ? 8 : 9, false, 0, 1.3};
    constexpr double countWidth = 92;
    const int counts = context.hasBefore() ? 2 : 1;
    std::vector<Column> columns{{Record::tr("What a player feels"), sheet.body().width() - counts * countWidth}};
    if (context.hasBefore())
        columns.push_back({Record::tr("keys out before"), countWidth, Qt::AlignRight});
    columns.push_back({Record::tr("keys out now"), countWidth, Qt::AlignRight});
    Table table(sheet, columns, style);
    table.setRowPadding(std::clamp((rowHeight - style.size * style.leading) / 2, 0.0, 2.0));
    for (const catalogue::Quantity quantity : judged) {
        QStringList cells{plainMeaningOf(quantity)};
        if (context.hasBefore())
            cells << countOf(*context.record.asFound, quantity);
        table.row(cells << countOf(context.record.asLeft, quantity));
    }
    table.end();
    sheet.skip(8);
}

/// An uneven step is inside its limits and may have been accepted all the same.
QString acceptedSentence(const sale_record::SaleRecord &record)
{
    const std::size_t earlier = record.earlierThatStand().size();
    const std::size_t all = record.concessions.size() + earlier;
    if (all == 0)
        return {};
    if (earlier == 0)
        return QLatin1Char(' ') + Record::tr("Looked at and accepted as they are, with the reason: %1.").arg(all);
    return QLatin1Char(' ') + Record::tr("Looked at and accepted, with the reason: %1, of these %2 in an earlier pass.")
                                  .arg(all)
                                  .arg(earlier);
}

/// A guarded rule calls in only what lies inside by the uncertainty.
QString closeSentence(int close)
{
    return close == 0
               ? QString()
               : QLatin1Char(' ') +
                     Record::tr("Inside, but too close to a limit to be called in by the rule used: %1.").arg(close);
}

QString restSentence(const Context &context, int exceptionsPage)
{
    const auto &record = context.record;
    const int rest = record.judgedPairs() - sale_record::pairsInOf(record.asLeft);
    const int close = record.pairsInside() - sale_record::pairsInOf(record.asLeft);
    if (rest == 0)
        return Record::tr("Nothing that was promised is outside its limits or unmeasured.") + acceptedSentence(record);
    int missing = 0;
    for (const auto &verdict : record.exceptions)
        missing += verdict.status == tolerance::Status::Missing ? 1 : 0;
    return Record::tr("Outside their limits: %1. Promised and not measured: %2. Page %3 names each of them.")
               .arg(rest - missing - close)
               .arg(missing)
               .arg(exceptionsPage) +
           closeSentence(close) + acceptedSentence(record);
}

double restHeight(const Context &context, double width)
{
    constexpr int somePage = 88; // as wide as any
    return TextBlock(restSentence(context, somePage), plainText, width).height();
}

/// The page that the sentence points to is known only when everything is set: it is laid out when it is painted.
void setRest(Sheet &sheet, const Context &context)
{
    sheet.later([&sheet, &context, at = QPointF(sheet.body().left(), sheet.y())](QPainter &painter) {
        TextBlock(restSentence(context, sheet.pageOf(exceptionsChapter())), plainText, sheet.body().width())
            .paint(painter, at);
    });
    sheet.skip(restHeight(context, sheet.body().width()));
}

QString signedSentence(const sale_record::Signature &signature, const QLocale &locale)
{
    return Record::tr("Looked through and signed by %1 on %2.")
        .arg(fromCore(signature.person), dayText(signature.at, locale));
}

TextBlock footOfFrontPage(const Sheet &sheet, const Context &context)
{
    QString text =
        Record::tr("This record speaks of the day on which the instrument was measured. It is no promise of how "
                   "long that lasts. The pages that follow are for your technician: limits and their sources, "
                   "charts, every reading, and how it was measured.");
    if (const auto &replaces = context.record.replaces)
        text += QLatin1Char(' ') + Record::tr("Revision %1. It takes the place of revision %2, issued on %3.")
                                       .arg(context.record.revision())
                                       .arg(replaces->revision)
                                       .arg(dayText(replaces->issued, context.options.locale));
    if (!context.record.workshop.empty())
        text += QLatin1Char('\n') + Record::tr("Workshop: %1.").arg(fromCore(context.record.workshop));
    if (!context.record.signatures.empty())
        text += QLatin1Char('\n') + signedSentence(context.record.signatures.back(), context.options.locale);
    if (const auto &seal = context.options.seal)
        text += QLatin1Char('\n') + Record::tr("Sealed by %1. Fingerprint of the certificate (SHA-256):\n%2")
                                        .arg(seal->name, seal->fingerprint);
    return {text, quietText, sheet.body().width()};
}

/// The whole page; how far it runs into its foot.
double setFront(Sheet &sheet, const Context &context, const FrontForm &form)
{
    setTitle(sheet, context, form);
    setFigure(sheet, context);
    setPicture(sheet, context, form.pictures);
    sheet.paragraph(workSentence(context), storyText);
    const TextBlock foot = footOfFrontPage(sheet, context);
    setMeanings(sheet, context, sheet.room() - foot.height() - restHeight(context, sheet.body().width()) - 20);
    setRest(sheet, context);
    const QPointF at(sheet.body().left(), sheet.body().bottom() - foot.height());
    sheet.later([foot, at](QPainter &painter) { foot.paint(painter, at); });
    return sheet.pageCount() > 1 ? sheet.fullRoom() : sheet.y() - at.y();
}

} // namespace

void setFrontPage(Sheet &sheet, const Context &context)
{
    // Where there is much to say, the keyboard gives way, then the portrait: set for trial, then in earnest.
    FrontForm form;
    for (const FrontForm &least : {FrontForm{0.6, true}, FrontForm{0.4, false}})
        for (form = {1, least.portrait}; form.pictures > least.pictures; form.pictures -= 0.1) {
            Sheet trial(sheet.pageSize());
            if (setFront(trial, context, form) <= 0)
                return (void)setFront(sheet, context, form);
        }
    (void)setFront(sheet, context, form);
}

} // namespace hammerline::record_pdf
