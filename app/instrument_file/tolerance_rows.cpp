#include "instrument_file/tolerance_rows.h"

#include "wording/wording.h"

#include <QObject>

namespace hammerline::instrument_file {

namespace {

struct Context {
    const tolerance::ToleranceSet &set;
    const tolerance::Entry &entry;
    const wording::NumberForm &form;
};

QString sourceOf(const tolerance::Point &point, const Context &context)
{
    for (const std::string *source : {&point.source, &context.entry.source, &context.set.source})
        if (!source->empty())
            return QString::fromStdString(*source);
    return QObject::tr("no source");
}

QString limitText(const std::optional<units::Amount> &limit, const wording::NumberForm &form)
{
    return limit ? wording::bareText(*limit, form) : QString();
}

QString doubtText(const tolerance::Entry &entry, const wording::NumberForm &form)
{
    if (entry.expandedUncertainty.baseCount() == 0)
        return {};
    const QString doubt = QObject::tr("± %1").arg(wording::amountText(entry.expandedUncertainty, form));
    return entry.rule == tolerance::Rule::Guarded ? QObject::tr("%1, guarded").arg(doubt) : doubt;
}

void addRows(std::vector<ToleranceRow> &rows, const QString &quantity, const tolerance::Points &points,
             const Context &context)
{
    for (const tolerance::Point &point : points) {
        const std::string &remark = point.remark.empty() ? context.entry.remark : point.remark;
        rows.push_back({quantity, wording::nameOf(point.note), limitText(point.low, context.form),
                        wording::amountText(point.target, context.form), limitText(point.high, context.form),
                        doubtText(context.entry, context.form), sourceOf(point, context),
                        QString::fromStdString(remark)});
    }
}

} // namespace

std::vector<ToleranceRow> rowsOf(const tolerance::ToleranceSet &set, const wording::NumberForm &form)
{
    std::vector<ToleranceRow> rows;
    for (const auto &[quantity, entry] : set.entries) {
        const Context context{set, entry, form};
        const QString name = wording::nameOf(quantity);
        addRows(rows, name, entry.both, context);
        addRows(rows, QObject::tr("%1, naturals").arg(name), entry.naturals, context);
        addRows(rows, QObject::tr("%1, sharps").arg(name), entry.sharps, context);
    }
    return rows;
}

} // namespace hammerline::instrument_file
