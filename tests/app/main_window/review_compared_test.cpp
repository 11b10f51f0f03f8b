// The lead's queue in the window and what `hammerline review` prints are one list: the same notes in the same order.
#include "app/main_window/window_desk.h"
#include "support/command_run.h"

#include "review_desk/item_model.h"

#include <QCheckBox>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableView>

namespace hammerline::main_window {
namespace {

class ReviewCompared : public WindowDesk {
protected:
    void put(readings::PassId pass, catalogue::Quantity quantity, int note, double mm)
    {
        shop.book.enter(pass,
                        {.place = {quantity, keyboard::Note(note), 1},
                         .value = units::Length::millimetres(mm),
                         .typed = std::to_string(mm)},
                        shop.stamp());
    }
    /// A second instrument, some notes out, close to a limit, uneven or not read in either.
    void fillShop()
    {
        tolerance::ToleranceSet set = support::plainSet();
        tolerance::Entry &letOff = set.entries[catalogue::Quantity::LetOff];
        letOff.step = units::Length::millimetres(0.4);
        letOff.expandedUncertainty = units::Length::millimetres(0.1);
        letOff.rule = tolerance::Rule::Guarded;
        shop.grand.toleranceText = exchange::writeToleranceSet(set);
        ASSERT_TRUE(shop.book.changeInstrument(shop.grand, shop.stamp(), {}));
        auto other = shop.grand;
        other.id = 0;
        other.uid.clear();
        other.name = "Blue grand";
        other.compass = {keyboard::Note(30), keyboard::Note(50)};
        other.sections.clear();
        const auto added = shop.book.addInstrument(other, shop.stamp()).value();
        readings::Pass begun{.instrument = added.id, .began = shop.stamp().at, .person = "Ben"};
        const auto pass = shop.book.beginPass(begun, shop.stamp()).id;
        for (int note = 30; note <= 50; ++note) {
            const double wave = ((note * 37) % 23 - 11) / 11.0;
            if (note % 7 != 0)
                put(pass, catalogue::Quantity::LetOff, note, 3.2 + 0.7 * wave);
            put(pass, catalogue::Quantity::Blow, note, 46 + 1.5 * wave);
            put(shop.pass.id, catalogue::Quantity::LetOff, note, 3.2 - 0.6 * wave);
        }
    }
    /// kind, instrument, note and quantity of each row of the window, as the command names them.
    [[nodiscard]] static std::vector<QStringList> inWindow(const MainWindow &window)
    {
        const auto *table = part<QTableView>(window, "reviewTable");
        const auto &model = dynamic_cast<const review_desk::ItemModel &>(*table->model());
        std::vector<QStringList> rows;
        for (int row = 0; row < model.rowCount(); ++row) {
            const review::Item &item = model.itemAt(row);
            const auto text = [](std::string_view id) { return QString::fromUtf8(id.data(), qsizetype(id.size())); };
            rows.push_back({text(review::idOf(item.kind)), model.desk().names.at(item.instrument),
                            QString::fromStdString(item.verdict.note.name()),
                            text(catalogue::idOf(item.verdict.quantity))});
        }
        return rows;
    }
    [[nodiscard]] std::vector<QStringList> printed() const
    {
        const auto ran = test_support::runCommand({"review", shop.path()});
        EXPECT_EQ(ran.status, 0) << ran.err;
        static const QRegularExpression columns(QStringLiteral("\\s{2,}"));
        std::vector<QStringList> rows;
        for (const std::string &line : test_support::linesOf(ran.out)) {
            const QStringList cells = QString::fromStdString(line).trimmed().split(columns);
            if (cells.size() > 4 && cells[0] != "half-widths")
                rows.push_back({cells[1], cells[2], cells[3], cells[4]});
        }
        return rows;
    }
    /// There is one of each beside either desk.
    static void click(const MainWindow &window, const char *name)
    {
        part<QPushButton>(*part<QTableView>(window, "reviewTable")->parentWidget(), name)->click();
    }
    void expectTheSame(const MainWindow &window) const
    {
        const auto shown = inWindow(window);
        const auto told = printed();
        ASSERT_EQ(shown.size(), told.size());
        for (std::size_t row = 0; row < told.size(); ++row)
            EXPECT_EQ(shown[row], told[row]) << "row " << row << ": " << told[row].join(' ').toStdString();
    }
};

TEST_F(ReviewCompared, TheWindowListsWhatTheCommandPrintsInTheSameOrder)
{
    fillShop();
    const auto window = openWindow();
    trigger(*window, "viewReview");
    // There is a desk over one pass too; the kinds of the wide one are those beside its table.
    const auto *desk = part<QTableView>(*window, "reviewTable")->parentWidget();
    part<QCheckBox>(*desk, "showMissing")->setChecked(true);
    ASSERT_GT(inWindow(*window).size(), 60u);
    std::set<QString> kinds;
    for (const QStringList &row : inWindow(*window))
        kinds.insert(row[0]);
    EXPECT_EQ(kinds.size(), 4u) << "each kind is among them";
    expectTheSame(*window);
}

TEST_F(ReviewCompared, TheyStayTheSameAfterTheLeadDecidedAndANoteWasMended)
{
    fillShop();
    const auto window = openWindow();
    prompts.willType("Lea");
    trigger(*window, "person");
    trigger(*window, "viewReview");
    part<QCheckBox>(*part<QTableView>(*window, "reviewTable")->parentWidget(), "showMissing")->setChecked(true);
    auto *table = part<QTableView>(*window, "reviewTable");
    table->selectRow(0);
    prompts.willType("it is to stay so");
    click(*window, "acceptChosen");
    table->selectRow(0);
    prompts.willType("turn the button");
    click(*window, "sendBackChosen");
    put(shop.pass.id, catalogue::Quantity::LetOff, 33, 3.2);
    QTest::qWait(2 * MainWindow::pollMilliseconds);
    expectTheSame(*window);
}

} // namespace
} // namespace hammerline::main_window
