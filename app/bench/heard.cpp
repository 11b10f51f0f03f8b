#include "bench/heard.h"

#include "sounding/saying.h"

#include <QCoreApplication>
#include <QStringList>

namespace hammerline::bench {

namespace {

constexpr const char *tonesKey = "bench/tones";
constexpr const char *speechKey = "bench/speech";

QString tr(const char *text)
{
    return QCoreApplication::translate("Heard", text);
}

QString valueAndVerdict(const Entered &entered, const wording::NumberForm &form)
{
    const auto &verdict = entered.verdict;
    QStringList parts{sounding::valueSaying(verdict && verdict->value ? *verdict->value : entered.reading.value, form)};
    if (verdict)
        parts << sounding::verdictSaying(*verdict);
    if (entered.takesApart)
        parts << tr("the takes differ");
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

} // namespace

HeardChoice HeardChoice::from(const QSettings &settings)
{
    return {settings.value(tonesKey).toBool(), settings.value(speechKey).toBool()};
}

void HeardChoice::store(QSettings &settings) const
{
    settings.setValue(tonesKey, tones);
    settings.setValue(speechKey, speech);
}

void Heard::entered(const Entered &entered, const wording::NumberForm &form)
{
    const auto kind = entered.verdict ? sounding::toneOf(*entered.verdict) : sounding::ToneKind::Taken;
    if (kind)
        tone(*kind);
    m_pending = valueAndVerdict(entered, form);
}

void Heard::doubted(const slips::Slip &slip, const wording::NumberForm &form)
{
    tone(sounding::ToneKind::Doubt);
    const QString value = sounding::valueSaying(slip.value, form);
    say(slip.meant ? tr("%1? or %2?").arg(value, sounding::valueSaying(*slip.meant, form)) : tr("%1?").arg(value));
}

void Heard::refused()
{
    tone(sounding::ToneKind::Doubt);
    say(tr("not taken"));
}

void Heard::gaugeLost()
{
    tone(sounding::ToneKind::Doubt);
    say(tr("gauge unplugged"));
}

void Heard::asked(const std::optional<readings::Place> &place)
{
    QStringList sentences;
    if (!m_pending.isEmpty())
        sentences << m_pending;
    if (!place) {
        if (!m_toldEnd)
            sentences << tr("end of the route");
    } else if (place != m_asked) {
        const bool otherQuantity = !m_asked || m_asked->quantity != place->quantity;
        sentences << sounding::askedSaying(place->note, otherQuantity ? std::optional(place->quantity) : std::nullopt);
    }
    m_toldEnd = !place;
    m_asked = place;
    m_pending.clear();
    if (!sentences.isEmpty())
        say(sentences.join(QStringLiteral(". ")));
}

void Heard::startAnew()
{
    m_pending.clear();
    m_asked.reset();
    m_toldEnd = false;
}

void Heard::tone(sounding::ToneKind kind)
{
    if (m_sounder && m_choice.tones)
        m_sounder->tone(kind);
}

void Heard::say(const QString &words)
{
    if (m_sounder && m_choice.speech)
        m_sounder->say(words);
}

} // namespace hammerline::bench
