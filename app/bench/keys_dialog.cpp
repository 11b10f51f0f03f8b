#include "bench/keys_dialog.h"

#include "bench/inside/fault_table.h"
#include "bench/inside/key_field.h"
#include "bench/key_rules.h"
#include "wording/palette.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>

#include <algorithm>

namespace hammerline::bench {

namespace {

QLabel *explanation(const QString &text)
{
    auto *label = new QLabel(text);
    label->setWordWrap(true);
    return label;
}

QPushButton *button(const QString &text, const QString &name)
{
    auto *made = new QPushButton(text);
    made->setObjectName(name);
    made->setAutoDefault(false);
    return made;
}

} // namespace

KeysDialog::KeysDialog(const BenchKeys &keys, const std::vector<FaultWord> &faults, QWidget *parent)
    : QDialog(parent), m_keys(keys), m_pages(new QTabWidget), m_faults(new FaultTable), m_reason(explanation({}))
{
    setObjectName("keysDialog");
    setWindowTitle(tr("Keys of the bench"));
    setAttribute(Qt::WA_DeleteOnClose);
    m_pages->addTab(makeKeysPage(), tr("&Keys"));
    m_pages->addTab(makeFaultsPage(), tr("&Felt faults"));
    m_faults->show(faults);
    m_reason->setObjectName("keysReason");
    m_reason->setFont(wording::font(wording::TextSize::Body, true));
    auto *foot =
        new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel | QDialogButtonBox::RestoreDefaults);
    connect(foot, &QDialogButtonBox::accepted, this, &KeysDialog::accept);
    connect(foot, &QDialogButtonBox::rejected, this, &KeysDialog::reject);
    auto *defaults = foot->button(QDialogButtonBox::RestoreDefaults);
    defaults->setObjectName("keysDefaults");
    defaults->setAutoDefault(false);
    connect(defaults, &QPushButton::clicked, this, &KeysDialog::reset);
    auto *column = new QVBoxLayout(this);
    column->addWidget(m_pages, 1);
    column->addWidget(m_reason);
    column->addWidget(foot);
    showKeys();
}

QWidget *KeysDialog::makeKeysPage()
{
    auto *page = new QWidget;
    auto *grid = new QGridLayout(page);
    grid->addWidget(explanation(tr("Go to a field and press the key. Backspace empties the field.")), 0, 0, 1, 3);
    int row = 1;
    for (const BenchAct act : allBenchActs()) {
        const QString name = nameOf(act);
        grid->addWidget(new QLabel(name), row, 0);
        for (std::size_t which = 0; which < keysOfAnAct; ++which) {
            auto *field = new KeyField;
            field->setObjectName(idOf(act) + QString::number(which + 1));
            field->setAccessibleName(which == 0 ? tr("%1: key").arg(name) : tr("%1: other key").arg(name));
            connect(field, &KeyField::keyWanted, this,
                    [this, act, which](const QKeySequence &key) { give(act, which, key); });
            grid->addWidget(field, row, static_cast<int>(which) + 1);
            m_fields[act].push_back(field);
        }
        ++row;
    }
    grid->setRowStretch(row, 1);
    return page;
}

QWidget *KeysDialog::makeFaultsPage()
{
    auto *page = new QWidget;
    auto *add = button(tr("&Add a fault"), "faultAdd");
    auto *remove = button(tr("&Remove the fault"), "faultRemove");
    connect(add, &QPushButton::clicked, m_faults, &FaultTable::add);
    connect(remove, &QPushButton::clicked, m_faults, &FaultTable::removeCurrent);
    auto *column = new QVBoxLayout(page);
    column->addWidget(explanation(tr("In the empty field the letter marks the fault on the note asked for; with Shift "
                                     "it clears the mark. Marks that stand keep their word.")));
    column->addWidget(m_faults, 1);
    auto *row = new QHBoxLayout;
    row->addWidget(add);
    row->addWidget(remove);
    row->addStretch(1);
    column->addLayout(row);
    return page;
}

void KeysDialog::give(BenchAct act, std::size_t which, const QKeySequence &key)
{
    std::vector<QKeySequence> keys = m_keys.of(act);
    if (!key.isEmpty()) {
        if (const QString why = whyNot(act, key, m_keys, m_faults->words()); !why.isEmpty())
            return refuse(why);
        if (std::ranges::find(keys, key) != keys.end())
            return refuse({});
        if (which < keys.size())
            keys[which] = key;
        else
            keys.push_back(key);
    } else if (which < keys.size()) {
        if (keys.size() == 1)
            return refuse(tr("“%1” needs a key; press another one.").arg(nameOf(act)));
        keys.erase(keys.begin() + static_cast<std::ptrdiff_t>(which));
    }
    m_keys.set(act, std::move(keys));
    refuse({});
    showKeys();
}

void KeysDialog::showKeys()
{
    for (const auto &[act, fields] : m_fields) {
        const auto &keys = m_keys.of(act);
        for (std::size_t which = 0; which < fields.size(); ++which)
            fields[which]->show(which < keys.size() ? keys[which] : QKeySequence());
    }
}

void KeysDialog::reset()
{
    m_keys = BenchKeys();
    m_faults->show(usualFaults());
    refuse({});
    showKeys();
}

void KeysDialog::refuse(const QString &why)
{
    m_reason->setText(why);
}

void KeysDialog::accept()
{
    setFocus(); // a cell that is being written is taken as it is
    const auto faults = m_faults->words();
    if (const QString why = whyNot(faults, m_keys); !why.isEmpty()) {
        m_pages->setCurrentIndex(1);
        return refuse(why);
    }
    emit ready(m_keys, faults);
    QDialog::accept();
}

} // namespace hammerline::bench
