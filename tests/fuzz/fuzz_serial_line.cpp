// What a cable brings: up to the first NUL a user's pattern (none: the built-in one), behind it the bytes. However the
// bytes are cut into pieces the lines are the same, and what is read from a line is read again from its own text.
#include "gauge_input/gauge_line.h"
#include "gauge_input/line_joiner.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>

using namespace hammerline;

namespace {

void insist(bool holds)
{
    if (!holds)
        std::abort();
}

QList<QByteArray> linesOf(const QByteArray &bytes, qsizetype piece)
{
    gauge_input::LineJoiner joiner;
    QList<QByteArray> lines;
    for (qsizetype at = 0; at < bytes.size(); at += piece)
        lines += joiner.take(bytes.mid(at, piece));
    return lines;
}

void read(const QByteArray &line, const gauge_input::LinePattern &pattern, units::Dimension dimension)
{
    const units::TypedForm form{.dimension = dimension, .allowNegative = true};
    const auto reading = gauge_input::readGaugeLine(line, pattern, form);
    if (!reading)
        return;
    insist(reading.value().raw.size() == line.size());
    const auto again = units::parseAmount(reading.value().typed.toStdString(), form);
    insist(again.ok() && again.value().value == reading.value().parsed.value);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const QByteArray all(reinterpret_cast<const char *>(data), static_cast<qsizetype>(size));
    const qsizetype end = all.indexOf('\0');
    gauge_input::LinePattern pattern;
    if (end > 0)
        pattern.expression = QString::fromUtf8(all.first(end));
    const QByteArray bytes = all.sliced(end + 1);
    const QList<QByteArray> lines = linesOf(bytes, std::max<qsizetype>(bytes.size(), 1));
    insist(lines == linesOf(bytes, 1) && lines == linesOf(bytes, 3));
    for (const QByteArray &line : lines.first(std::min<qsizetype>(lines.size(), 8))) {
        insist(!line.isEmpty() && line.size() <= gauge_input::LineJoiner::longestLine);
        read(line, pattern, units::Dimension::Length);
        read(line, pattern, units::Dimension::Mass);
    }
    return 0;
}
