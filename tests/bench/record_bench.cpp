// What it costs to make a record, to seal it and to verify it. Yardstick: as many words as a record has, painted onto
// bare pages by the same library in the same process.

#include "record_pdf/record_pdf.h"
#include "seal/seal.h"
#include "support/sample_records.h"

#include <QApplication>
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include <benchmark/benchmark.h>

namespace hammerline {
namespace {

constexpr int wordsOfARecord = 3000;
constexpr int wordsOfAPage = 300;

support::SampleWish grandWithManyExceptions()
{
    support::SampleWish wish;
    wish.action = catalogue::ActionKind::Grand;
    wish.guarded = true;
    wish.spreadAsLeft = 0.9;
    return wish;
}

void assembleRecord(benchmark::State &state)
{
    const auto input = support::sampleInput(grandWithManyExceptions());
    for (auto _ : state)
        benchmark::DoNotOptimize(sale_record::assemble(input));
}
BENCHMARK(assembleRecord)->Unit(benchmark::kMillisecond);

void makeUprightRecord(benchmark::State &state)
{
    const auto record = support::sampleRecord({});
    for (auto _ : state)
        benchmark::DoNotOptimize(record_pdf::makeRecordPdf(record, {}));
}
BENCHMARK(makeUprightRecord)->Unit(benchmark::kMillisecond);

void makeGrandRecordWithManyExceptions(benchmark::State &state)
{
    const auto record = support::sampleRecord(grandWithManyExceptions());
    for (auto _ : state)
        benchmark::DoNotOptimize(record_pdf::makeRecordPdf(record, {}));
}
BENCHMARK(makeGrandRecordWithManyExceptions)->Unit(benchmark::kMillisecond);

void yardstickBareWords(benchmark::State &state)
{
    for (auto _ : state) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        QPainter painter(&writer);
        for (int word = 0; word < wordsOfARecord; ++word) {
            if (word > 0 && word % wordsOfAPage == 0)
                writer.newPage();
            painter.drawText(QPointF(100, 100 + 40 * (word % wordsOfAPage)), QString::number(word));
        }
        painter.end();
        benchmark::DoNotOptimize(bytes);
    }
}
BENCHMARK(yardstickBareWords)->Unit(benchmark::kMillisecond);

void sealAndVerify(benchmark::State &state)
{
    const auto record = support::sampleRecord({});
    const std::string pdf = record_pdf::makeRecordPdf(record, {}).toStdString();
    const auto key = seal::makeSigningKey("Invented Workshop", record.issued).value();
    for (auto _ : state)
        benchmark::DoNotOptimize(seal::verifyRecord(seal::sealRecord(pdf, key, record.issued)));
}
BENCHMARK(sealAndVerify)->Unit(benchmark::kMillisecond);

void verify(benchmark::State &state)
{
    const auto record = support::sampleRecord({});
    const auto key = seal::makeSigningKey("Invented Workshop", record.issued).value();
    const std::string file = seal::sealRecord(record_pdf::makeRecordPdf(record, {}).toStdString(), key, record.issued);
    for (auto _ : state)
        benchmark::DoNotOptimize(seal::verifyRecord(file));
}
BENCHMARK(verify)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace hammerline

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
