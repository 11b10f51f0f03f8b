// The yardstick of first_paint, in an executable that carries no more than Qt: a main window with a menu bar, a table
// of 88 rows and a chart of one series on two axes. Writes the moment of its first paint to standard output.
#include "bench/painted_application.h"

#include <QApplication>
#include <QChart>
#include <QChartView>
#include <QLineSeries>
#include <QMenuBar>
#include <QSplitter>
#include <QTableWidget>
#include <QTimer>
#include <QValueAxis>

#include <cstdio>

namespace {

constexpr int keys = 88;

QTableWidget *makeTable()
{
    auto *table = new QTableWidget(keys, 3);
    for (int row = 0; row < keys; ++row)
        for (int column = 0; column < 3; ++column)
            table->setItem(row, column, new QTableWidgetItem(QString::number(row * 3 + column)));
    return table;
}

QChartView *makeChart()
{
    auto *series = new QLineSeries;
    for (int key = 1; key <= keys; ++key)
        series->append(key, key * 7 % 5);
    auto *chart = new QChart;
    chart->addSeries(series);
    for (const Qt::Alignment side : {Qt::AlignBottom, Qt::AlignLeft}) {
        auto *axis = new QValueAxis;
        chart->addAxis(axis, side);
        series->attachAxis(axis);
    }
    return new QChartView(chart);
}

} // namespace

int main(int argc, char **argv)
{
    hammerline::bench::PaintedApplication<QApplication> application(argc, argv);
    application.onPainted([&application](QMainWindow &) {
        std::printf("%lld\n", hammerline::bench::monotonicNow());
        application.onPainted({});
        QTimer::singleShot(0, &application, &QCoreApplication::quit);
    });
    QMainWindow window;
    for (const char *name : {"File", "Edit", "View", "Help"}) {
        QMenu *menu = window.menuBar()->addMenu(name);
        for (int entry = 1; entry <= 5; ++entry)
            menu->addAction(QString::number(entry));
    }
    auto *middle = new QSplitter;
    middle->addWidget(makeTable());
    middle->addWidget(makeChart());
    window.setCentralWidget(middle);
    window.resize(1366, 768);
    window.show();
    return QApplication::exec();
}
