#pragma once
// The list of trusted keys: who, which key, since when. A key is added from a record that it sealed or from a
// certificate's file, after its fingerprint was compared, and taken off again. What is done is written at once; records
// already sealed stay what they are.

#include "prompts/prompts.h"
#include "readings/instant.h"
#include "seal/trusted_keys.h"

#include <QDialog>

#include <string>
#include <vector>

class QLabel;
class QPushButton;
class QTableWidget;

namespace hammerline::main_window {

/// Asks whether the fingerprint was compared, or compares it with one that is typed in; true: it is the same.
[[nodiscard]] bool askWhetherTheSame(QWidget *parent, prompts::Prompts &prompts, const seal::TrustedKey &key);

/// The signer of a record that is unaltered, or the owner of a certificate.
[[nodiscard]] outcome::Outcome<seal::TrustedKey> keyInFile(const std::string &path);

class TrustedKeysDialog : public QDialog {
    Q_OBJECT
public:
    /// `list`: path of the file. A key that is added is noted as trusted since `today`.
    TrustedKeysDialog(std::string list, readings::Instant today, prompts::Prompts &prompts, QWidget *parent = nullptr);

private:
    [[nodiscard]] QPushButton *addButton(const QString &text, const char *name, void (TrustedKeysDialog::*deed)());
    void showList(const std::string &fingerprint);
    void showWhole();
    void add();
    void remove();
    void tellFaults(const QString &title, const std::vector<outcome::Fault> &faults);

    std::string m_list;
    std::string m_today;
    prompts::Prompts &m_prompts;
    std::vector<seal::TrustedKey> m_keys; ///< one a row
    QTableWidget *m_table;
    QLabel *m_hint;
    QLabel *m_whole; ///< name and fingerprint of the current row
    QPushButton *m_remove;
};

} // namespace hammerline::main_window
