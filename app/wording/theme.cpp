// The theme: a QPalette by role and the little that a palette cannot say.
#include "wording/dressed_window.h"
#include "wording/palette.h"

#include <QApplication>
#include <QStyleFactory>
#include <QWidget>

namespace hammerline::wording {

namespace {

QPalette widgetPalette(const Palette &roles)
{
    QPalette palette;
    palette.setColor(QPalette::Window, roles.paper);
    palette.setColor(QPalette::WindowText, roles.ink);
    palette.setColor(QPalette::Base, roles.field);
    palette.setColor(QPalette::AlternateBase, roles.paper);
    palette.setColor(QPalette::Text, roles.ink);
    palette.setColor(QPalette::PlaceholderText, roles.quiet);
    palette.setColor(QPalette::Button, roles.sharp);
    palette.setColor(QPalette::ButtonText, roles.ink);
    palette.setColor(QPalette::BrightText, roles.tooLarge);
    palette.setColor(QPalette::ToolTipBase, roles.field);
    palette.setColor(QPalette::ToolTipText, roles.ink);
    palette.setColor(QPalette::Highlight, roles.ink);
    palette.setColor(QPalette::HighlightedText, roles.paper);
    palette.setColor(QPalette::Link, roles.tooSmall);
    palette.setColor(QPalette::LinkVisited, roles.tooSmall);
    palette.setColor(QPalette::Light, roles.field);
    palette.setColor(QPalette::Midlight, roles.faintLine);
    palette.setColor(QPalette::Mid, roles.line);
    palette.setColor(QPalette::Dark, roles.line);
    palette.setColor(QPalette::Shadow, roles.ink);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, roles.line);
    return palette;
}

/// Corners of 2 px, one line instead of nested boxes, and a focus that can be seen from the bench.
constexpr char16_t sheetPattern[] = uR"(
QToolTip { background: %1; color: %2; border: 1px solid %3; padding: 4px; }
QLineEdit, QPlainTextEdit, QComboBox, QSpinBox, QDoubleSpinBox, QDateTimeEdit {
    background: %1; border: 1px solid %3; border-radius: 2px; padding: 4px; }
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus, QSpinBox:focus, QDoubleSpinBox:focus, QDateTimeEdit:focus {
    border: 2px solid %2; padding: 3px; }
QPushButton { background: %4; border: 1px solid %3; border-radius: 2px; padding: 6px 12px; }
QPushButton:hover { border-color: %2; }
QPushButton:focus { border: 2px solid %2; padding: 5px 11px; }
QPushButton:default { background: %2; color: %5; border-color: %2; }
QPushButton:default:focus { border: 2px solid %6; }
QPushButton:disabled { color: %3; background: %5; border-color: %7; }
QHeaderView::section { background: %5; color: %8; border: none; border-bottom: 1px solid %3; padding: 4px 8px; }
QTableView, QTreeView, QListView { border: none; gridline-color: %7; }
QGroupBox { border: none; margin-top: 20px; font-weight: bold; }
QGroupBox::title { subcontrol-origin: margin; left: 0; }
QStatusBar::item { border: none; }
QLineEdit[refused="true"], QLineEdit[refused="true"]:focus { border: 3px solid %9; padding: 2px; }
QMenuBar { background: %5; }
QMenuBar::item:selected, QMenu::item:selected { background: %2; color: %5; }
QMenu { background: %1; border: 1px solid %3; }
QMenu::item { padding: 6px 24px 6px 24px; }
QMenu::item:disabled { color: %3; }
QMenu::separator { height: 1px; background: %7; margin: 4px 0; }
QTabBar::tab { background: %5; color: %8; padding: 6px 16px; border: none; border-bottom: 3px solid %5; }
hammerline--wording--NameBar::tab { padding: 6px; }
QTabBar::tab:selected { color: %2; border-bottom-color: %2; }
QTabBar::tab:hover { color: %2; } QTabBar:focus { border: 1px solid %3; }
QProgressBar { background: %7; border: none; } QProgressBar::chunk { background: %8; }
QSplitter::handle { background: %7; width: 1px; }
QTreeView, QTableView, QListView { background: %5; outline: 1px solid %3; }
QTreeView::item, QListView::item { padding: 3px; border: none; }
QTableView::item { padding: 2px 8px; border: none; }
QHeaderView::section:vertical { border: none; }
QTableCornerButton::section { background: %5; border: none; }
QComboBox { combobox-popup: 0; } QComboBox::drop-down { border: none; width: 22px; }
QComboBox::down-arrow { image: url(:/icons/arrow-%10.svg); width: 11px; height: 11px; }
QComboBox QAbstractItemView { background: %1; border: 1px solid %3; selection-background-color: %2; selection-color: %5;
    outline: none; }
QComboBox QAbstractItemView::item:selected { background: %2; color: %5; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { border: none; width: 18px; }
QAbstractSpinBox::up-arrow { image: url(:/icons/arrow-up-%10.svg); width: 9px; height: 9px; }
QAbstractSpinBox::down-arrow { image: url(:/icons/arrow-%10.svg); width: 9px; height: 9px; }
QCheckBox::indicator, QRadioButton::indicator, QAbstractItemView::indicator {
    width: 13px; height: 13px; border: 1px solid %3; background: %1; }
QCheckBox::indicator, QAbstractItemView::indicator { border-radius: 2px; } QRadioButton::indicator { border-radius: 7px; }
QCheckBox::indicator:checked, QAbstractItemView::indicator:checked { image: url(:/icons/check-%10.svg); }
QRadioButton::indicator:checked { image: url(:/icons/dot-%10.svg); }
QCheckBox:focus, QRadioButton:focus { border: 1px solid %2; border-radius: 2px; }
QTreeView::item:selected, QListView::item:selected, QTableView::item:selected { background: %4; color: %2; }
QTreeView:focus, QListView:focus, QTableView:focus { border: 1px solid %2; }
#troubleBar, #editedBar { background: %4; border-left: 6px solid %9; }
#personLabel { color: %8; } QLineEdit:disabled { color: %8; background: %5; border-color: %7; }
#rule { color: %7; background: %7; max-height: 1px; border: none; }
)";

QString styleSheet(const Palette &roles, Theme theme)
{
    return QString::fromUtf16(sheetPattern)
        .arg(roles.field.name(), roles.ink.name(), roles.line.name(), roles.sharp.name(), roles.paper.name(),
             roles.tooSmall.name(), roles.faintLine.name(), roles.quiet.name(), roles.tooLarge.name())
        .arg(theme == Theme::Light ? QStringLiteral("light") : QStringLiteral("dark"));
}

constexpr const char *dressedProperty = "hammerlineDressed";

QString &sheetNow()
{
    static QString sheet;
    return sheet;
}

} // namespace

void dress(QWidget &window)
{
    window.setProperty(dressedProperty, true);
    window.setStyleSheet(sheetNow());
}

void applyTheme(QApplication &, Theme theme)
{
    const Palette &roles = paletteOf(theme);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(widgetPalette(roles));
    QApplication::setFont(font(TextSize::Body));
    sheetNow() = styleSheet(roles, theme);
    for (QWidget *window : QApplication::topLevelWidgets())
        if (window->property(dressedProperty).toBool())
            window->setStyleSheet(sheetNow());
}

} // namespace hammerline::wording
