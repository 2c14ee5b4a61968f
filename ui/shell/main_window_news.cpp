#include "ui/shell/ledge.h"
#include "ui/shell/ledge_note.h"
#include "ui/shell/main_window.h"
#include "ui/shell/page_deck.h"
#include "ui/shell/typing_guard.h"

#include <QApplication>
#include <QPointer>

namespace chalk::ui::shell {

void MainWindow::takeNews(const QString& words)
{
    m_hasNews = true;
    if (!words.isEmpty()) {
        m_ledge->note()->sayNews(words);
    }
    readNews();
}

void MainWindow::readNews()
{
    if (!m_hasNews) {
        return;
    }
    Page* page = m_deck->present();
    if (!isInTheMiddle(page == nullptr ? nullptr : page->filterField())) {
        m_hasNews = false;
        const QPointer<QWidget> focus = QApplication::focusWidget();
        reload();
        if (focus != nullptr && focus->isVisible() && focus != QApplication::focusWidget()) {
            focus->setFocus(Qt::OtherFocusReason);
        }
    }
}

void MainWindow::showTrouble(const std::optional<common::BannerMessage>& trouble)
{
    if (trouble) {
        m_trouble->setMessage(*trouble);
    }
    m_trouble->setVisible(trouble.has_value());
}

}  // namespace chalk::ui::shell
