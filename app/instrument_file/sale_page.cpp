#include "instrument_file/sale_page.h"

#include "instrument_file/inside/form_parts.h"
#include "instrument_file/inside/page_parts.h"

#include <QBoxLayout>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

namespace hammerline::instrument_file {

SalePage::SalePage(QWidget *parent) : QWidget(parent)
{
    auto *column = columnOf(this);
    column->addWidget(makeHint(tr("Who buys the instrument, and for how much, where the workshop wants to keep it; each "
                                  "field is stored when it is left. This stays out of the record unless you ask for "
                                  "it. When the instrument is handed over, you are asked whether it goes along.")));
    auto *form = new QFormLayout;
    m_buyer = addLine(form, tr("Buyer"), "saleBuyer");
    m_price = addLine(form, tr("Price"), "salePrice");
    m_remark = addLine(form, tr("Remark"), "saleRemark");
    column->addLayout(form);
    column->addStretch(1);
    for (QLineEdit *line : {m_buyer, m_price, m_remark}) {
        line->setMaximumWidth(widestLine(*line));
        connect(line, &QLineEdit::editingFinished, this, &SalePage::tell);
    }
}

void SalePage::tell()
{
    dossier::Sale sale{plain(m_buyer), plain(m_price), plain(m_remark)};
    if (std::exchange(m_shown, sale) != sale)
        emit noted(sale);
}

void SalePage::show(const dossier::Sale &sale)
{
    m_shown = sale;
    m_buyer->setText(QString::fromStdString(sale.buyer));
    m_price->setText(QString::fromStdString(sale.price));
    m_remark->setText(QString::fromStdString(sale.remark));
}

} // namespace hammerline::instrument_file
