// The strip beside a bare widget of the same size that fills itself with one colour.
#include "charts/charts.h"
#include "keyboard_strip/keyboard_strip.h"
#include "support/lively_pass.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QImage>
#include <QPainter>

namespace hammerline {
namespace {

constexpr int stripWidth = 1366;

class BareWidget : public QWidget {
protected:
    void paintEvent(QPaintEvent *) override { QPainter(this).fillRect(rect(), Qt::white); }
};

keyboard_strip::StripModel livelyModel()
{
    static const auto now = support::livelyJudgement(0.45);
    static const auto before = support::livelyJudgement(1);
    keyboard_strip::StripSource source;
    source.sections = support::livelySections();
    source.now = &now;
    source.before = &before;
    source.quantity = catalogue::Quantity::LetOff;
    return keyboard_strip::modelOf(source);
}

void showSettled(QWidget &widget, int height)
{
    widget.resize(stripWidth, height);
    widget.show();
    QCoreApplication::processEvents();
}

void repaintBareWidget(benchmark::State &state)
{
    BareWidget widget;
    showSettled(widget, keyboard_strip::KeyboardStrip().heightForWidth(stripWidth));
    for (auto _ : state)
        widget.repaint();
}
BENCHMARK(repaintBareWidget)->Unit(benchmark::kMicrosecond);

void repaintStrip(benchmark::State &state)
{
    keyboard_strip::KeyboardStrip strip;
    strip.setModel(livelyModel());
    showSettled(strip, strip.heightForWidth(stripWidth));
    for (auto _ : state)
        strip.repaint();
}
BENCHMARK(repaintStrip)->Unit(benchmark::kMicrosecond);

void updateOneKey(benchmark::State &state)
{
    keyboard_strip::KeyboardStrip strip;
    strip.setModel(livelyModel());
    showSettled(strip, strip.heightForWidth(stripWidth));
    keyboard_strip::StripKey key = *strip.model().find(keyboard::Note(49));
    for (auto _ : state) {
        key.now = -key.now.value_or(0.5);
        strip.setKey(key);
        QCoreApplication::processEvents();
    }
}
BENCHMARK(updateOneKey)->Unit(benchmark::kMicrosecond);

void makeModel(benchmark::State &state)
{
    for (auto _ : state)
        benchmark::DoNotOptimize(livelyModel());
}
BENCHMARK(makeModel)->Unit(benchmark::kMicrosecond);

void paintChart(benchmark::State &state)
{
    charts::ChartData data;
    data.now = support::livelyJudgement(1);
    QImage image(stripWidth, 500, QImage::Format_RGB32);
    for (auto _ : state) {
        QPainter painter(&image);
        charts::renderChart(painter, image.rect(), data, wording::paletteOf(wording::Theme::Light), 12);
    }
}
BENCHMARK(paintChart)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace hammerline

int main(int argc, char **argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
