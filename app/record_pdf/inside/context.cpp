#include "record_pdf/inside/pages.h"

#include "wording/wording.h"

namespace hammerline::record_pdf {

QString Context::foundName() const
{
    return hasBefore() ? wording::nameOf(record.asFound->pass.purpose) : QString();
}

QString Context::leftName() const
{
    return wording::nameOf(record.asLeft.pass.purpose);
}

QString Context::headOf(catalogue::Quantity quantity) const
{
    const auto dimension = catalogue::infoOf(quantity).dimension;
    return QStringLiteral("%1 (%2)").arg(wording::nameOf(quantity), wording::unitText(dimension, form));
}

std::vector<catalogue::Quantity> quantitiesOf(const sale_record::SaleRecord &record)
{
    std::vector<catalogue::Quantity> quantities;
    for (const catalogue::QuantityInfo &info : catalogue::all()) {
        const bool left = record.asLeft.summaries.contains(info.quantity);
        const bool found = record.asFound && record.asFound->summaries.contains(info.quantity);
        if (left || found)
            quantities.push_back(info.quantity);
    }
    return quantities;
}

QString exceptionsChapter()
{
    return Record::tr("Exceptions");
}

QString readingsChapter()
{
    return Record::tr("Every reading");
}

} // namespace hammerline::record_pdf
