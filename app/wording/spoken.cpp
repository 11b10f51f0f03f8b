#include "wording/spoken.h"

#include "wording/wording.h"

#include <QRegularExpression>

namespace hammerline::wording {

QString spoken(const QString &text)
{
    static const QRegularExpression pair(QStringLiteral("\\b([a-z_]+)(,? )([A-G][#b]?[0-8])\\b"));
    QString said;
    qsizetype from = 0;
    for (auto each = pair.globalMatch(text); each.hasNext();) {
        const auto match = each.next();
        const auto quantity = catalogue::findQuantity(match.captured(1).toStdString());
        const auto note = keyboard::parseNote(match.captured(3).toStdString());
        if (!quantity || !note)
            continue;
        said +=
            text.mid(from, match.capturedStart() - from) + nameOf(*quantity) + match.captured(2) + nameOf(note.value());
        from = match.capturedEnd();
    }
    return said + text.mid(from);
}

} // namespace hammerline::wording
