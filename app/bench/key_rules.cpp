#include "bench/key_rules.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace hammerline::bench {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("KeyRules", text);
}

bool beginsValue(int key)
{
    return (key >= Qt::Key_0 && key <= Qt::Key_9) || key == Qt::Key_Period || key == Qt::Key_Comma;
}

/// Keys with a meaning in every field of every window.
bool belongsToTheField(int key)
{
    constexpr std::array fixed{Qt::Key_Return, Qt::Key_Enter, Qt::Key_Tab,       Qt::Key_Backtab,
                               Qt::Key_Escape, Qt::Key_Menu,  Qt::Key_Backspace, Qt::Key_F1};
    return std::ranges::find(fixed, key) != fixed.end();
}

QString readable(const QKeySequence &key)
{
    return key.toString(QKeySequence::NativeText);
}

/// "b" -> the key that types it.
QKeySequence keyOf(const FaultWord &fault)
{
    return QKeySequence(QString(fault.key.toUpper()));
}

} // namespace

QString whyNot(BenchAct act, const QKeySequence &key, const BenchKeys &keys, const std::vector<FaultWord> &faults)
{
    const QKeyCombination pressed = key[0];
    if (pressed.keyboardModifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
        return tr("%1 may belong to a menu; choose a key without Ctrl and Alt.").arg(readable(key));
    if (beginsValue(pressed.key()))
        return tr("%1 begins a value; choose a key that no value begins with.").arg(readable(key));
    if (belongsToTheField(pressed.key()))
        return tr("%1 keeps its meaning in every field; choose another key.").arg(readable(key));
    if (const auto taken = keys.actOf(key); taken && *taken != act)
        return tr("%1 is taken: “%2”. Change that one first.").arg(readable(key), nameOf(*taken));
    for (const FaultWord &fault : faults)
        if (keyOf(fault) == key)
            return tr("%1 marks “%2”. Change that fault’s letter first.").arg(readable(key), fault.word);
    return {};
}

QString whyNot(const std::vector<FaultWord> &faults, const BenchKeys &keys)
{
    for (auto fault = faults.begin(); fault != faults.end(); ++fault) {
        if (fault->word.isEmpty())
            return tr("The fault of the letter %1 has no word yet.").arg(fault->key);
        if (fault->word.contains(';'))
            return tr("“%1”: a word cannot hold a semicolon.").arg(fault->word);
        if (!fault->key.isLetter())
            return tr("“%1” needs a letter, a to z; anything else could begin a value.").arg(fault->word);
        const auto twin = std::find_if(faults.begin(), fault, [&](const auto &one) { return one.key == fault->key; });
        if (twin != fault)
            return tr("%1 cannot mark both “%2” and “%3”.").arg(fault->key).arg(twin->word, fault->word);
        if (const auto act = keys.actOf(keyOf(*fault)))
            return tr("%1 cannot mark “%2”: it is a key already, “%3”.").arg(fault->key).arg(fault->word, nameOf(*act));
    }
    return {};
}

} // namespace hammerline::bench
