#pragma once

#include "core/store/people_merge.h"
#include "core/store/people_reader.h"
#include "ui/common/clock.h"
#include "ui/shell/page.h"

#include <functional>
#include <optional>
#include <utility>
#include <vector>

class QComboBox;
class QLabel;
class QListWidget;

namespace chalk::ui::common {
class ActHistory;
class ActionButton;
class Banner;
class Look;
class PageHeader;
}

namespace chalk::ui::people {

/// What the page works with. All of it outlives the page.
struct DuplicatesServices {
    const common::Look& look;
    store::Database& database;
    const common::Clock& clock;
    common::ActHistory& acts;
    std::function<QString()> atUtc;
};

/// Clients who may be one person, and what goes where when two become one. Pairs that look alike are offered; any two can be chosen by hand.
class DuplicatesPage : public shell::Page {
    Q_OBJECT

public:
    explicit DuplicatesPage(DuplicatesServices services, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override;
    /// With a client, that one is kept until another choice is made.
    void open(const shell::Place& place) override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;

    /// The two on show: who is kept, and who goes over.
    [[nodiscard]] std::pair<base::ClientId, base::ClientId> chosen() const;

private:
    void build();
    void choosePair(int row);
    void swapTwo();
    /// Marks the pair that is chosen, or begun, in the list; of a pair that is begun it chooses the other.
    void selectPair();
    void showPlan();
    void merge();
    void choose(QComboBox& box, base::ClientId client);

    DuplicatesServices m_services;
    std::vector<tables::KnownPerson> m_known;
    std::vector<tables::PersonMatch> m_pairs;
    common::PageHeader* m_header;
    common::Banner* m_banner;
    QListWidget* m_list;
    QComboBox* m_kept;
    QComboBox* m_other;
    QLabel* m_plan;
    common::ActionButton* m_swap;
    common::ActionButton* m_merge;
};

}  // namespace chalk::ui::people
