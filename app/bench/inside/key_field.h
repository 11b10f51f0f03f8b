#pragma once
// A field that shows a key and takes the next one pressed. Tab, Enter and Escape stay what they are in a dialog;
// Backspace empties.

#include <QKeySequence>
#include <QLineEdit>

namespace hammerline::bench {

class KeyField : public QLineEdit {
    Q_OBJECT
public:
    explicit KeyField(QWidget *parent = nullptr);
    void show(const QKeySequence &key); ///< empty: no key

signals:
    /// Nothing is shown yet: whether the key may be is for others to say. Empty: no key.
    void keyWanted(const QKeySequence &key);

protected:
    void keyPressEvent(QKeyEvent *event) override;
};

} // namespace hammerline::bench
