#include "bench/bench_keys.h"

#include <algorithm>
#include <array>

namespace hammerline::bench {

namespace {

constexpr std::array acts{BenchAct::Back,   BenchAct::Skip,     BenchAct::Again, BenchAct::Withdraw,
                          BenchAct::StepUp, BenchAct::StepDown, BenchAct::Same};

QString settingOf(BenchAct act)
{
    static const std::map<BenchAct, QString> names{{BenchAct::Back, "back"},      {BenchAct::Skip, "skip"},
                                                   {BenchAct::Again, "again"},    {BenchAct::Withdraw, "withdraw"},
                                                   {BenchAct::StepUp, "step-up"}, {BenchAct::StepDown, "step-down"},
                                                   {BenchAct::Same, "same"}};
    return "bench/keys/" + names.at(act);
}

/// Where a key sits (number pad or not) does not matter, nor does the Shift that a layout needs for `*` or `+`.
bool sameKey(const QKeySequence &sequence, const QKeyEvent &event)
{
    if (sequence.count() != 1)
        return false;
    const QKeyCombination wanted = sequence[0];
    const Qt::KeyboardModifiers held = event.modifiers() & ~Qt::KeypadModifier;
    if (wanted.key() != event.key())
        return false;
    const bool isSign = !event.text().isEmpty() && event.text().at(0).isPrint();
    const Qt::KeyboardModifiers ignored = isSign ? Qt::ShiftModifier : Qt::NoModifier;
    return (held & ~ignored) == (wanted.keyboardModifiers() & ~ignored);
}

} // namespace

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
    for (const auto &[act, sequences] : m_keys)
        if (std::ranges::any_of(sequences, [&event](const QKeySequence &one) { return sameKey(one, event); }))
            return act;
    return std::nullopt;
}

QString BenchKeys::labelOf(BenchAct act) const
{
    const auto &sequences = of(act);
    return sequences.empty() ? QString() : sequences.front().toString(QKeySequence::NativeText);
}

} // namespace hammerline::bench
