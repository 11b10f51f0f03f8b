#pragma once
// What is asked for, large: the key, its name, the quantity with its limits, and the field that takes the value.

#include "bench/bench_keys.h"
#include "bench/big_text.h"
#include "bench/entry_session.h"
#include "bench/fault_words.h"
#include "bench/inside/key_burst.h"
#include "wording/number_form.h"

#include <QLabel>
#include <QLineEdit>
#include <QTimer>
#include <QWidget>

namespace hammerline::bench {

class KeyPicture;

class AskedBoard : public QWidget {
    Q_OBJECT
public:
    explicit AskedBoard(QWidget *parent = nullptr);

    void setKeys(BenchKeys keys) { m_keys = std::move(keys); }
    void setFaultWords(std::vector<FaultWord> words) { m_words = std::move(words); }
    /// A gauge that sends no Enter types here: a burst of keys is taken when it ends.
    void setGaugeTypes(bool types) { m_gaugeTypes = types; }
    void ask(const EntrySession &session, const wording::NumberForm &form);
    /// At the end of a route: a heading and what to do next.
    void askNothing(const QString &heading, const QString &next);
    /// The text stays as typed; the field says why.
    void refuse(const QString &reason);
    /// Something to know in the same place; the field is not at fault.
    void remark(const QString &text);
    /// A slip is asked about: typing replaces the text, Enter confirms it.
    void askAbout(const QString &question);
    /// A value that was not typed: Enter takes it, a step changes it, typing replaces it. What is typed over it has as
    /// many digits as it needs and is taken by Enter alone: the way out of a fixed number of digits.
    void propose(const QString &text);
    [[nodiscard]] bool holdsProposal() const { return m_proposed; }
    /// The same as if `text` had been typed: what is typed next is added to it.
    void begin(const QString &text);
    void clear();
    [[nodiscard]] QLineEdit *field() const { return m_field; }
    /// The name of the quantity, for the head of the view.
    [[nodiscard]] BigText *heading() const { return m_what; }

signals:
    void typed(const QString &text);
    void actWanted(hammerline::bench::BenchAct act);
    /// Escape: what stood in the field is gone.
    void dropped();
    void faultFelt(const QString &word, bool marked);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void arrange();
    [[nodiscard]] bool takeFaultKey(const QKeyEvent &key);
    void followTyping();
    void keepSign();
    [[nodiscard]] bool takeEnd(const QKeyEvent &key);
    BenchKeys m_keys;
    std::vector<FaultWord> m_words = usualFaults();
    int m_digits = 0;
    bool m_gaugeTypes = false;
    KeyBurst m_burst;
    QTimer m_burstEnd;
    QChar m_sign;            ///< a step key that may yet prove to be the sign of a burst
    bool m_signed = false;   ///< the asked quantity may be negative
    bool m_proposed = false; ///< what stands in the field was not typed
    bool m_byHand = false;   ///< typed over a proposal: taken by Enter alone, however many digits
    KeyPicture *m_key;
    BigText *m_note;
    BigField *m_field;
    QLabel *m_unit;
    BigText *m_what;
    QLabel *m_limits; ///< gives its place to the reason where something was refused
    QLabel *m_reason;
};

} // namespace hammerline::bench
