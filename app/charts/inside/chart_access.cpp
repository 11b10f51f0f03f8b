#include "charts/inside/chart_access.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QChartView>

namespace hammerline::charts {

namespace {

class ChartAccess : public QAccessibleWidget {
public:
    explicit ChartAccess(QWidget *view) : QAccessibleWidget(view, QAccessible::Chart) {}
    int childCount() const override { return 0; }
    QAccessibleInterface *child(int) const override { return nullptr; }
};

QAccessibleInterface *makeAccess(const QString &className, QObject *object)
{
    if (className != QLatin1String(QChartView::staticMetaObject.className()))
        return nullptr;
    return new ChartAccess(static_cast<QChartView *>(object)); // owned by QAccessible
}

} // namespace

void installChartAccess()
{
    QAccessible::installFactory(makeAccess); // which ignores a factory it has already
}

} // namespace hammerline::charts
