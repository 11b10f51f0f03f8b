#include "main_window/file_view.h"

#include "analysis/drift.h"
#include "instrument_file/photograph_copy.h"
#include "instrument_file/photograph_form.h"
#include "instrument_file/work_form.h"
#include "wording/name_bar.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QGuiApplication>
#include <QTabWidget>

#include <algorithm>

namespace hammerline::main_window {

namespace {

/// Pages whose names are all seen.
class NamedPages : public QTabWidget {
public:
    NamedPages()
    {
        setTabBar(new wording::NameBar(wording::TextSize::Body));
        setDocumentMode(true);
    }
};

} // namespace

using dossier::Photograph;
using dossier::WorkEntry;

FileView::FileView(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_pages(new NamedPages),
      m_work(new instrument_file::WorkPage),
      m_condition(new instrument_file::ConditionPage),
      m_photographs(new instrument_file::PhotographPage),
      m_drift(new instrument_file::DriftPage),
      m_sale(new instrument_file::SalePage),
      m_changes(new instrument_file::ChangePage)
{
    m_pages->setObjectName("filePages");
    m_pages->addTab(m_work, tr("Work"));
    m_pages->addTab(m_condition, tr("Condition"));
    m_pages->addTab(m_photographs, tr("Photographs"));
    m_pages->addTab(m_drift, tr("Since it was left"));
    m_pages->addTab(m_sale, tr("Sale"));
    m_pages->addTab(m_changes, tr("Before and after"));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_pages);
    connectPages();
}

void FileView::connectPages()
{
    connect(m_work, &instrument_file::WorkPage::addWanted, this, [this] {
        WorkEntry fresh{.person = m_workshop.stamp().person};
        fresh.day = std::chrono::floor<std::chrono::days>(m_workshop.stamp().at);
        editWork(fresh);
    });
    connect(m_work, &instrument_file::WorkPage::changeWanted, this, &FileView::changeWork);
    connect(m_work, &instrument_file::WorkPage::strikeWanted, this, &FileView::strikeWork);
    connect(m_condition, &instrument_file::ConditionPage::said, this,
            [this](const dossier::ConditionPlace &place, const dossier::Condition &condition) {
                m_workshop.book().sayCondition(id(), place, condition, m_workshop.stamp());
                written();
            });
    connect(m_photographs, &instrument_file::PhotographPage::addWanted, this, &FileView::addPhotograph);
    connect(m_photographs, &instrument_file::PhotographPage::changeWanted, this, &FileView::changePhotograph);
    connect(m_photographs, &instrument_file::PhotographPage::removeWanted, this, [this](const QString &uid) {
        m_workshop.book().removePhotograph(id(), uid.toStdString(), m_workshop.stamp());
        written();
    });
    connect(m_sale, &instrument_file::SalePage::noted, this, [this](const dossier::Sale &sale) {
        m_workshop.book().noteSale(id(), sale, m_workshop.stamp());
        written();
    });
    connect(m_changes, &instrument_file::ChangePage::passesChosen, this, &FileView::choosePair);
    connect(m_changes, &instrument_file::ChangePage::noteChosen, this, &FileView::noteChosen);
    connect(&m_workshop, &Workshop::passChosen, this, &FileView::fillIfSeen);
    connect(&m_workshop, &Workshop::readingsChanged, this, &FileView::fillIfSeen);
    connect(&m_workshop, &Workshop::instrumentsChanged, this, &FileView::fillIfSeen);
}

void FileView::setForm(const wording::NumberForm &form)
{
    m_form = form;
    fillIfSeen();
}

void FileView::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    fill();
}

void FileView::fillIfSeen()
{
    if (isVisible())
        fill();
}

void FileView::fill()
{
    const auto *instrument = m_workshop.instrument();
    m_pages->setEnabled(instrument != nullptr);
    m_dossier = instrument ? m_workshop.book().dossier(instrument->id) : dossier::Dossier();
    m_work->show(m_dossier);
    m_condition->show(m_dossier.conditions);
    m_photographs->show(m_dossier.photographs, [this](const std::string &digest) { return picture(digest); });
    m_sale->show(m_dossier.sale);
    fillDrift();
    fillChanges();
}

void FileView::fillDrift()
{
    const PassInView *after = m_workshop.pass();
    if (m_workshop.readsBlind())
        return m_drift->showWithheld();
    if (after == nullptr || after->check) // a sample is no pass of a drift
        return m_drift->showNothing();
    const auto passes = m_workshop.passesOf(after->pass.instrument);
    const readings::Pass *left = analysis::leftBefore(passes, after->pass);
    if (left == nullptr)
        return m_drift->showNothing();
    const auto *set = m_workshop.set() ? &*m_workshop.set() : nullptr;
    const auto drifts = analysis::driftBetween({*left, m_workshop.book().values(left->id)},
                                               {after->pass, after->values}, m_workshop.instrument()->sections, set);
    m_drift->show(*left, after->pass, drifts, m_form);
}

/// Undo has a new name then, and another window may see it.
void FileView::written()
{
    m_workshop.instrumentsTouched();
    fillIfSeen();
}

void FileView::editWork(const WorkEntry &entry)
{
    auto *form = new instrument_file::WorkForm(entry, m_workshop.instrument()->compass, this);
    connect(form, &instrument_file::WorkForm::ready, this, [this](const WorkEntry &made) {
        logbook::Logbook &book = m_workshop.book();
        if (made.uid.empty()) {
            if (const auto added = book.addWork(id(), made, m_workshop.stamp()); !added)
                tell(added.faults());
        } else if (const auto changed = book.changeWork(id(), made, m_workshop.stamp(), {}); !changed) {
            tell(changed.faults());
        }
        written();
    });
    form->open();
}

void FileView::changeWork(const QString &uid)
{
    const auto found = std::ranges::find(m_dossier.work, uid.toStdString(), &WorkEntry::uid);
    if (found != m_dossier.work.end())
        editWork(*found);
}

void FileView::strikeWork(const QString &uid)
{
    if (m_prompts == nullptr || uid.isEmpty())
        return;
    const auto reason = m_prompts->askText(this, {tr("Strike out the entry"), tr("Why"), {}});
    if (!reason)
        return;
    m_workshop.book().strikeWork(id(), uid.toStdString(), m_workshop.stamp(), reason->toStdString());
    written();
}

void FileView::addPhotograph()
{
    if (m_prompts == nullptr)
        return;
    const auto path = m_prompts->chooseFile(this, {prompts::FileWish::Use::Open,
                                                   tr("A photograph"),
                                                   tr("Pictures (*.jpg *.jpeg *.png *.webp);;All files (*)"),
                                                   {},
                                                   {}});
    if (!path)
        return;
    QGuiApplication::setOverrideCursor(Qt::WaitCursor); // the largest take a second or two
    const auto copy = instrument_file::photographCopy(*path);
    QGuiApplication::restoreOverrideCursor();
    if (!copy)
        return tell(copy.faults());
    editPhotograph({}, copy.value());
}

void FileView::changePhotograph(const QString &uid)
{
    const auto found = std::ranges::find(m_dossier.photographs, uid.toStdString(), &Photograph::uid);
    if (found != m_dossier.photographs.end())
        editPhotograph(*found, picture(found->digest));
}

void FileView::editPhotograph(const Photograph &photograph, const QByteArray &jpeg)
{
    QStringList views;
    for (const Photograph &each : m_dossier.photographs)
        if (const QString view = QString::fromStdString(each.view); !views.contains(view))
            views << view;
    auto *form = new instrument_file::PhotographForm(photograph, jpeg, views, this);
    connect(form, &instrument_file::PhotographForm::ready, this, [this, jpeg](const Photograph &made) {
        logbook::Logbook &book = m_workshop.book();
        if (made.uid.empty()) {
            const std::string_view bytes(jpeg.constData(), static_cast<std::size_t>(jpeg.size()));
            if (const auto added = book.addPhotograph(id(), made, bytes, m_workshop.stamp()); !added)
                tell(added.faults());
        } else if (const auto changed = book.changePhotograph(id(), made, m_workshop.stamp()); !changed) {
            tell(changed.faults());
        }
        written();
    });
    form->open();
}

void FileView::tell(const std::vector<outcome::Fault> &faults)
{
    if (m_prompts != nullptr)
        m_prompts->tell(this, {tr("Nothing was stored"), wording::faultsText(faults), {}});
}

QByteArray FileView::picture(const std::string &digest) const
{
    const auto jpeg = m_workshop.book().picture(digest);
    return jpeg ? QByteArray(jpeg->data(), static_cast<qsizetype>(jpeg->size())) : QByteArray();
}

} // namespace hammerline::main_window
