#include "keyboard_strip/inside/strip_access.h"

#include "keyboard_strip/keyboard_strip.h"
#include "wording/wording.h"

#include <QAccessible>
#include <QAccessibleActionInterface>
#include <QAccessibleWidget>
#include <QPointer>

#include <map>

namespace hammerline::keyboard_strip {

namespace {

/// One key. Knows the strip and its place on it; everything else is asked for when it is asked.
class KeyAccess : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    KeyAccess(KeyboardStrip *strip, int index) : m_strip(strip), m_index(index) {}

    bool isValid() const override { return key() != nullptr; }
    QObject *object() const override { return nullptr; }
    QAccessibleInterface *parent() const override { return QAccessible::queryAccessibleInterface(m_strip.data()); }
    QAccessibleInterface *child(int) const override { return nullptr; }
    QAccessibleInterface *childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface *) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    void setText(QAccessible::Text, const QString &) override {}
    QString text(QAccessible::Text kind) const override;
    QRect rect() const override;
    QAccessible::State state() const override;
    void *interface_cast(QAccessible::InterfaceType type) override;

    QStringList actionNames() const override { return {pressAction()}; }
    QStringList keyBindingsForAction(const QString &) const override { return {}; }
    void doAction(const QString &action) override;

private:
    const StripKey *key() const;
    QPointer<KeyboardStrip> m_strip;
    int m_index;
};

const StripKey *KeyAccess::key() const
{
    const KeyboardStrip *strip = m_strip.data();
    const auto index = static_cast<std::size_t>(m_index);
    return strip && index < strip->model().keys.size() ? &strip->model().keys[index] : nullptr;
}

QString KeyAccess::text(QAccessible::Text kind) const
{
    const StripKey *shown = key();
    if (!shown)
        return {};
    if (kind == QAccessible::Name)
        return wording::nameOf(shown->note);
    if (kind == QAccessible::Value)
        return shown->valueText;
    return kind == QAccessible::Description ? shown->story : QString();
}

QRect KeyAccess::rect() const
{
    const KeyboardStrip *strip = m_strip.data();
    const StripKey *shown = key();
    if (!strip || !shown)
        return {};
    const QRect onStrip = strip->keyRect(shown->note);
    return {strip->mapToGlobal(onStrip.topLeft()), onStrip.size()};
}

QAccessible::State KeyAccess::state() const
{
    QAccessible::State state;
    const KeyboardStrip *strip = m_strip.data();
    const StripKey *shown = key();
    state.invalid = !strip || !shown;
    if (!strip || !shown)
        return state;
    state.selectable = true;
    state.focusable = true;
    state.selected = strip->selected() == shown->note;
    state.focused = state.selected && strip->hasFocus();
    return state;
}

void *KeyAccess::interface_cast(QAccessible::InterfaceType type)
{
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface *>(this) : nullptr;
}

void KeyAccess::doAction(const QString &action)
{
    KeyboardStrip *strip = m_strip.data();
    const StripKey *shown = key();
    if (strip && shown && action == pressAction())
        strip->choose(shown->note);
}

class StripAccess : public QAccessibleWidget {
public:
    explicit StripAccess(KeyboardStrip *strip) : QAccessibleWidget(strip, QAccessible::List), m_strip(strip) {}
    ~StripAccess() override
    {
        for (const auto &[index, id] : m_children)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return m_strip->model().compass.count(); }
    QAccessibleInterface *child(int index) const override;
    QAccessibleInterface *childAt(int x, int y) const override;
    QAccessibleInterface *focusChild() const override;
    int indexOfChild(const QAccessibleInterface *child) const override;
    QString text(QAccessible::Text kind) const override;

private:
    KeyboardStrip *m_strip;
    mutable std::map<int, QAccessible::Id> m_children;
};

QAccessibleInterface *StripAccess::child(int index) const
{
    if (index < 0 || index >= childCount())
        return nullptr;
    const auto found = m_children.find(index);
    if (found != m_children.end())
        return QAccessible::accessibleInterface(found->second);
    auto *key = new KeyAccess(m_strip, index); // owned by QAccessible from here on
    m_children[index] = QAccessible::registerAccessibleInterface(key);
    return key;
}

QAccessibleInterface *StripAccess::childAt(int x, int y) const
{
    for (const auto colour : {keyboard::Colour::Sharp, keyboard::Colour::Natural})
        for (int index = 0; index < childCount(); ++index)
            if (m_strip->model().keys[static_cast<std::size_t>(index)].note.colour() == colour &&
                child(index)->rect().contains(x, y))
                return child(index);
    return nullptr;
}

QAccessibleInterface *StripAccess::focusChild() const
{
    return m_strip->hasFocus() ? child(m_strip->selected().number() - m_strip->model().compass.first.number())
                               : nullptr;
}

int StripAccess::indexOfChild(const QAccessibleInterface *wanted) const
{
    for (const auto &[index, id] : m_children)
        if (QAccessible::accessibleInterface(id) == wanted)
            return index;
    return -1;
}

QString StripAccess::text(QAccessible::Text kind) const
{
    const StripKey *key = m_strip->model().find(m_strip->selected());
    if (kind == QAccessible::Value && key)
        return key->story;
    return QAccessibleWidget::text(kind);
}

QAccessibleInterface *makeAccess(const QString &className, QObject *object)
{
    if (className != QLatin1String(KeyboardStrip::staticMetaObject.className()))
        return nullptr;
    return new StripAccess(static_cast<KeyboardStrip *>(object)); // owned by QAccessible
}

AccessListener listenerInstead = nullptr;

void deliver(QAccessibleEvent &event, int index)
{
    event.setChild(index);
    listenerInstead == nullptr ? QAccessible::updateAccessibility(&event) : listenerInstead(event);
}

} // namespace

void installStripAccess()
{
    QAccessible::installFactory(makeAccess); // which ignores a factory it has already
}

void listenInstead(AccessListener listener)
{
    listenerInstead = listener;
}

void tellAccess(KeyboardStrip &strip, keyboard::Note note, AccessNews news)
{
    if (!QAccessible::isActive() && listenerInstead == nullptr)
        return;
    const int index = note.number() - strip.model().compass.first.number();
    if (news == AccessNews::Value) {
        const StripKey *key = strip.model().find(note);
        QAccessibleValueChangeEvent event(&strip, key ? key->valueText : QString());
        return deliver(event, index);
    }
    // Without the focus nothing may call a reader away from where it is: the bench's field, most of the time.
    QAccessibleEvent event(&strip, strip.hasFocus() ? QAccessible::Focus : QAccessible::Selection);
    deliver(event, index);
}

} // namespace hammerline::keyboard_strip
