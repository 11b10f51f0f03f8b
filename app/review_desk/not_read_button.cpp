#include "review_desk/not_read_button.h"

#include "review_desk/item_model.h"

namespace hammerline::review_desk {

NotReadButton::NotReadButton(const ItemModel &model, QAbstractButton *box, QWidget *parent)
    : QPushButton(parent), m_model(model)
{
    setObjectName("showNotRead");
    setAutoDefault(false);
    connect(this, &QPushButton::clicked, box, [box] { box->setChecked(true); });
    connect(&model, &ItemModel::modelReset, this, &NotReadButton::follow);
    follow();
}

void NotReadButton::follow()
{
    const int missing = m_model.countOf(review::Kind::Missing);
    setText(tr("Show what is not read (%1)").arg(missing));
    setVisible(missing > 0 && !m_model.filters().kinds.contains(review::Kind::Missing));
}

} // namespace hammerline::review_desk
