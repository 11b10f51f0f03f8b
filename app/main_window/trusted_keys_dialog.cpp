#include "main_window/trusted_keys_dialog.h"

#include "exchange/exchange.h"
#include "main_window/seal_words.h"
#include "seal/seal.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

namespace hammerline::main_window {

namespace {

constexpr std::size_t largestCertificate = 64 * 1024;
constexpr QSize usualSize{700, 360};
constexpr QSize largestSize{1300, 700}; ///< on a small screen
enum Column { Name, Since, Fingerprint, columnTotal };

QTableWidget *makeTable()
{
    auto *table = new QTableWidget(0, columnTotal);
    table->setObjectName("trustedKeys");
    table->setAccessibleName(TrustedKeysDialog::tr("Trusted keys"));
    table->setHorizontalHeaderLabels(
        {TrustedKeysDialog::tr("Name"), TrustedKeysDialog::tr("Trusted since"), TrustedKeysDialog::tr("Fingerprint")});
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setStretchLastSection(true);
    table->verticalHeader()->hide();
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setFrameShape(QFrame::NoFrame);
    return table;
}

/// Enough to tell rows apart; the whole stands below the table.
QString shortened(const std::string &fingerprint)
{
    return QString::fromStdString(seal::groupedFingerprint(fingerprint.substr(0, 8))) + QChar(0x2026);
}

bool sameAsTyped(QWidget *parent, prompts::Prompts &prompts, const seal::TrustedKey &key)
{
    const auto typed = prompts.askText(parent, {.title = TrustedKeysDialog::tr("Compare the fingerprint"),
                                                .label = TrustedKeysDialog::tr("The fingerprint that the workshop "
                                                                               "gave you; blanks do not count"),
                                                .initial = {}});
    if (!typed)
        return false;
    const auto given = seal::parseFingerprint(typed->toStdString());
    if (given && given.value() == key.fingerprint)
        return true;
    prompts.tell(parent, {TrustedKeysDialog::tr("The key is not trusted"),
                          given ? TrustedKeysDialog::tr("That is another key's fingerprint.")
                                : TrustedKeysDialog::tr("That is no fingerprint."),
                          given ? TrustedKeysDialog::tr("Ask the workshop before you believe the record.")
                                : TrustedKeysDialog::tr("It has 64 digits and letters from a to f.")});
    return false;
}

} // namespace

bool askWhetherTheSame(QWidget *parent, prompts::Prompts &prompts, const seal::TrustedKey &key)
{
    const int chosen = prompts.ask(
        parent, {.title = TrustedKeysDialog::tr("Trust this key"),
                 .text = TrustedKeysDialog::tr("Is this the fingerprint that the workshop gave you?"),
                 .detail = keyWords(key.name, key.fingerprint) + "\n\n" +
                           TrustedKeysDialog::tr("It should come by another way than the record: a letter, their "
                                                 "own premises, the telephone."),
                 .choices = {TrustedKeysDialog::tr("It is the same: trust it"), TrustedKeysDialog::tr("Type it in…"),
                             TrustedKeysDialog::tr("Do not trust it")},
                 .preferred = 2});
    return chosen == 0 || (chosen == 1 && sameAsTyped(parent, prompts, key));
}

outcome::Outcome<seal::TrustedKey> keyInFile(const std::string &path)
{
    const auto bytes = exchange::readFile(path);
    if (!bytes)
        return bytes.faults();
    if (bytes.value().size() <= largestCertificate)
        if (const auto certificate = seal::readCertificate(bytes.value()))
            return seal::TrustedKey{seal::fingerprintOf(certificate.value()), seal::nameIn(certificate.value())};
    const seal::SealReport report = seal::verifyRecord(bytes.value());
    if (report.verdict != seal::SealVerdict::Unaltered)
        return outcome::Fault{.file = path, .problem = report.reason + ", and no certificate"};
    return seal::TrustedKey{report.fingerprint, report.signer};
}

TrustedKeysDialog::TrustedKeysDialog(std::string list, readings::Instant today, prompts::Prompts &prompts,
                                     QWidget *parent)
    : QDialog(parent),
      m_list(std::move(list)),
      m_today(readings::isoDate(today)),
      m_prompts(prompts),
      m_table(makeTable()),
      m_hint(new QLabel),
      m_whole(new QLabel)
{
    setObjectName("trustedKeysDialog");
    setWindowTitle(tr("Trusted keys"));
    setAttribute(Qt::WA_DeleteOnClose);
    m_hint->setObjectName("trustedKeysHint");
    m_hint->setWordWrap(true);
    m_whole->setObjectName("trustedKeyWhole");
    m_whole->setTextFormat(Qt::PlainText);
    m_whole->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    connect(m_table, &QTableWidget::currentCellChanged, this, &TrustedKeysDialog::showWhole);
    auto *row = new QHBoxLayout;
    row->addWidget(addButton(tr("&Add from a record or certificate…"), "trustedKeyAdd", &TrustedKeysDialog::add));
    m_remove = addButton(tr("&Take off the list…"), "trustedKeyRemove", &TrustedKeysDialog::remove);
    row->addWidget(m_remove);
    row->addStretch(1);
    auto *foot = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(foot, &QDialogButtonBox::rejected, this, &QDialog::reject);
    row->addWidget(foot);
    auto *column = new QVBoxLayout(this);
    column->setSpacing(3 * wording::gridStep);
    column->addWidget(m_hint);
    column->addWidget(m_table, 1);
    column->addWidget(m_whole);
    column->addLayout(row);
    showList({});
    m_table->setFocus();
    resize(usualSize.boundedTo(largestSize / wording::textScale()) * wording::textScale());
}

QPushButton *TrustedKeysDialog::addButton(const QString &text, const char *name, void (TrustedKeysDialog::*deed)())
{
    auto *button = new QPushButton(text);
    button->setObjectName(name);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, deed);
    return button;
}

/// Reads the list anew; the row of `fingerprint` becomes current, else the first.
void TrustedKeysDialog::showList(const std::string &fingerprint)
{
    const auto keys = seal::trustedKeys(m_list);
    m_keys = keys ? keys.value() : std::vector<seal::TrustedKey>();
    m_table->setRowCount(0);
    int current = 0;
    for (const seal::TrustedKey &key : m_keys) {
        const int row = m_table->rowCount();
        m_table->insertRow(row);
        m_table->setItem(row, Name, new QTableWidgetItem(plainName(key.name)));
        m_table->setItem(row, Since,
                         new QTableWidgetItem(key.since.empty() ? tr("not noted") : QString::fromStdString(key.since)));
        m_table->setItem(row, Fingerprint, new QTableWidgetItem(shortened(key.fingerprint)));
        if (key.fingerprint == fingerprint)
            current = row;
    }
    m_table->resizeColumnsToContents();
    if (!m_keys.empty())
        m_table->setCurrentCell(current, 0);
    m_remove->setEnabled(!m_keys.empty());
    showWhole();
    m_hint->setText(!keys ? wording::faultsText(keys.faults())
                    : m_keys.empty()
                        ? tr("No key is trusted yet. Yours is put here when your first record is made.")
                        : tr("A record sealed by one of these keys is told as known; another key under the same name "
                             "is told apart."));
}

void TrustedKeysDialog::showWhole()
{
    const int row = m_table->currentRow();
    const bool any = row >= 0 && row < static_cast<int>(m_keys.size());
    m_whole->setText(
        any ? keyWords(m_keys[static_cast<std::size_t>(row)].name, m_keys[static_cast<std::size_t>(row)].fingerprint)
            : QString());
}

void TrustedKeysDialog::add()
{
    const auto path =
        m_prompts.chooseFile(this, {prompts::FileWish::Use::Open,
                                    tr("A record or a certificate"),
                                    tr("Records and certificates (*.pdf *.crt *.cer *.pem *.der);;All files (*)"),
                                    {},
                                    {}});
    if (!path)
        return;
    auto found = keyInFile(path->toStdString());
    if (!found)
        return tellFaults(tr("No key was added"), found.faults());
    seal::TrustedKey key = std::move(found).value();
    if (seal::standingOf(key, m_keys) == seal::Standing::Trusted) {
        showList(key.fingerprint);
        return m_prompts.tell(
            this, {tr("Trusted keys"), tr("This key is on the list already."), {}, prompts::Weight::Question});
    }
    if (!askWhetherTheSame(this, m_prompts, key))
        return;
    key.since = m_today;
    const auto trusted = seal::trustKey(m_list, key);
    if (!trusted)
        return tellFaults(tr("No key was added"), trusted.faults());
    showList(key.fingerprint);
}

void TrustedKeysDialog::remove()
{
    const int row = m_table->currentRow();
    if (row < 0 || row >= static_cast<int>(m_keys.size()))
        return;
    const seal::TrustedKey key = m_keys[static_cast<std::size_t>(row)];
    const int chosen =
        m_prompts.ask(this, {.title = tr("Take a key off the list"),
                             .text = tr("Trust the key of %1 no longer?").arg(plainName(key.name)),
                             .detail = tr("Records that it sealed stay as they are; they are told as sealed by a key "
                                          "that is not known."),
                             .choices = {tr("Take it off"), tr("Keep it")},
                             .preferred = 1});
    if (chosen != 0)
        return;
    const auto removed = seal::distrustKey(m_list, key.fingerprint);
    if (!removed)
        return tellFaults(tr("The key stays on the list"), removed.faults());
    showList({});
    m_table->setFocus();
}

void TrustedKeysDialog::tellFaults(const QString &title, const std::vector<outcome::Fault> &faults)
{
    m_prompts.tell(this, {title, title + '.', wording::faultsText(faults)});
}

} // namespace hammerline::main_window
