#include "wording/plain_name.h"

#include <QRegularExpression>
#include <QTextBoundaryFinder>

namespace hammerline::wording {

QString plainName(const QString &name)
{
    constexpr qsizetype mostBytes = 90;
    static const QRegularExpression notPlain("[^\\p{L}\\p{M}\\p{N}]+");
    const QString plain = name.left(mostBytes).toLower().replace(notPlain, "-");
    if (plain.toUtf8().size() <= mostBytes)
        return plain;
    QTextBoundaryFinder letters(QTextBoundaryFinder::Grapheme, plain);
    letters.setPosition(plain.size());
    while (plain.left(letters.position()).toUtf8().size() > mostBytes)
        letters.toPreviousBoundary();
    return plain.left(letters.position());
}

} // namespace hammerline::wording
