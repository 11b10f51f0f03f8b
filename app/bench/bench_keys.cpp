#include "bench/bench_keys.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace hammerline::bench {

namespace {

constexpr std::array acts{BenchAct::Back,   BenchAct::Skip,     BenchAct::Again, BenchAct::Withdraw,
                          BenchAct::StepUp, BenchAct::StepDown, BenchAct::Same};

QString settingOf(BenchAct act)
{
    return "bench/keys/" + idOf(act);
}

} // namespace

std::span<const BenchAct> allBenchActs()
{
    return acts;
}

QString idOf(BenchAct act)
{
    static const std::map<BenchAct, QString> names{{BenchAct::Back, "back"},      {BenchAct::Skip, "skip"},
                                                   {BenchAct::Again, "again"},    {BenchAct::Withdraw, "withdraw"},
                                                   {BenchAct::StepUp, "step-up"}, {BenchAct::StepDown, "step-down"},
                                                   {BenchAct::Same, "same"}};
    return names.at(act);
}

QString nameOf(BenchAct act)
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("BenchKeys", text); };
    switch (act) {
    case BenchAct::Back:
        return tr("Back to the note before");
    case BenchAct::Skip:
        return tr("On to the next note");
    case BenchAct::Again:
        return tr("A further take");
    case BenchAct::Withdraw:
        return tr("Withdraw the reading");
    case BenchAct::StepUp:
        return tr("A step up from the last value");
    case BenchAct::StepDown:
        return tr("A step down from the last value");
    case BenchAct::Same:
        return tr("The same as the last value");
    }
    return {};
}

QKeySequence keyOf(const QKeyEvent &event)
{
    const bool isSign = !event.text().isEmpty() && event.text().at(0).isPrint();
    const Qt::KeyboardModifiers ignored =
        isSign ? Qt::KeypadModifier | Qt::ShiftModifier : Qt::KeyboardModifiers(Qt::KeypadModifier);
    return QKeySequence(QKeyCombination(event.modifiers() & ~ignored, static_cast<Qt::Key>(event.key())));
}

BenchKeys::BenchKeys()
    : m_keys{{BenchAct::Back, {QKeySequence(Qt::Key_Asterisk), QKeySequence(Qt::Key_Up)}},
             {BenchAct::Skip, {QKeySequence(Qt::Key_Down)}},
             {BenchAct::Again, {QKeySequence(Qt::Key_Slash)}},
             {BenchAct::Withdraw, {QKeySequence(Qt::Key_Delete)}},
             {BenchAct::StepUp, {QKeySequence(Qt::Key_Plus)}},
             {BenchAct::StepDown, {QKeySequence(Qt::Key_Minus)}},
             {BenchAct::Same, {QKeySequence(Qt::Key_Equal), QKeySequence(Qt::Key_Space)}}}
{
}

BenchKeys BenchKeys::from(const QSettings &settings)
{
    BenchKeys keys;
    for (const BenchAct act : acts) {
        const QString stored = settings.value(settingOf(act)).toString();
        const QList<QKeySequence> sequences = QKeySequence::listFromString(stored, QKeySequence::PortableText);
        if (!sequences.isEmpty() && !sequences.front().isEmpty())
            keys.m_keys[act].assign(sequences.begin(), sequences.end());
    }
    return keys;
}

void BenchKeys::store(QSettings &settings) const
{
    for (const auto &[act, sequences] : m_keys) {
        const QList<QKeySequence> list(sequences.begin(), sequences.end());
        settings.setValue(settingOf(act), QKeySequence::listToString(list, QKeySequence::PortableText));
    }
}

std::optional<BenchAct> BenchKeys::actOf(const QKeyEvent &event) const
{
    return actOf(keyOf(event));
}

std::optional<BenchAct> BenchKeys::actOf(const QKeySequence &key) const
{
    for (const auto &[act, sequences] : m_keys)
        if (std::ranges::find(sequences, key) != sequences.end())
            return act;
    return std::nullopt;
}

QString BenchKeys::labelOf(BenchAct act) const
{
    const auto &sequences = of(act);
    return sequences.empty() ? QString() : sequences.front().toString(QKeySequence::NativeText);
}

} // namespace hammerline::bench
