#pragma once
// Where every key of the bench and the list of felt faults are changed. A key that cannot be is refused with the reason
// and what stood stays; nothing is given out before OK.

#include "bench/bench_keys.h"
#include "bench/fault_words.h"

#include <QDialog>

class QLabel;
class QTabWidget;

namespace hammerline::bench {

class FaultTable;
class KeyField;

class KeysDialog : public QDialog {
    Q_OBJECT
public:
    KeysDialog(const BenchKeys &keys, const std::vector<FaultWord> &faults, QWidget *parent = nullptr);

signals:
    void ready(const hammerline::bench::BenchKeys &keys, const std::vector<hammerline::bench::FaultWord> &faults);

public slots:
    /// Emits `ready` and closes where the list of faults can be as it is; else tells why and stays.
    void accept() override;

private:
    static constexpr std::size_t keysOfAnAct = 2;

    [[nodiscard]] QWidget *makeKeysPage();
    [[nodiscard]] QWidget *makeFaultsPage();
    void give(BenchAct act, std::size_t which, const QKeySequence &key);
    void showKeys();
    void reset();
    void refuse(const QString &why);

    BenchKeys m_keys;
    std::map<BenchAct, std::vector<KeyField *>> m_fields;
    QTabWidget *m_pages;
    FaultTable *m_faults;
    QLabel *m_reason;
};

} // namespace hammerline::bench
