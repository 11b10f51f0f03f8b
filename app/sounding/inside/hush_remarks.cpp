#include "sounding/inside/hush_remarks.h"

#include <QString>
#include <QtGlobal>

#include <algorithm>
#include <array>
#include <atomic>

namespace hammerline::sounding {

namespace {

constexpr std::array<QStringView, 2> noNews{u"PulseAudioService", u"No text-to-speech plug-ins"};
/// What was in force before; other threads may remark something meanwhile.
std::atomic<QtMessageHandler> passOn = nullptr;

void dropNoNews(QtMsgType type, const QMessageLogContext &context, const QString &text)
{
    const bool dropped =
        std::ranges::any_of(noNews, [&text](QStringView beginning) { return text.startsWith(beginning); });
    if (const QtMessageHandler next = passOn; !dropped && next)
        next(type, context, text);
}

} // namespace

HushRemarks::HushRemarks()
{
    const QtMessageHandler before = qInstallMessageHandler(dropNoNews);
    m_outermost = before != dropNoNews;
    if (m_outermost)
        passOn = before;
}

HushRemarks::~HushRemarks()
{
    if (m_outermost)
        qInstallMessageHandler(passOn);
}

} // namespace hammerline::sounding
