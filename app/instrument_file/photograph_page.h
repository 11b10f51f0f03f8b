#pragma once
// Photographs in pairs: what came at the left, what leaves at the right.

#include "dossier/dossier.h"

#include <QByteArray>
#include <QWidget>

#include <functional>

class QLabel;
class QPushButton;
class QTableWidget;

namespace hammerline::instrument_file {

class PhotographPage : public QWidget {
    Q_OBJECT
public:
    /// The JPEG with a digest; empty: there is none.
    using Loader = std::function<QByteArray(const std::string &digest)>;

    explicit PhotographPage(QWidget *parent = nullptr);
    void show(const std::vector<dossier::Photograph> &photographs, const Loader &load);
    using QWidget::show;

signals:
    void addWanted();
    void changeWanted(const QString &uid);
    void removeWanted(const QString &uid);

private:
    void put(int row, int column, const dossier::Photograph *photograph, const Loader &load);
    [[nodiscard]] QString chosen() const;
    void enableButtons();

    QTableWidget *m_table;
    QLabel *m_story;
    QPushButton *m_change, *m_remove;
};

} // namespace hammerline::instrument_file
