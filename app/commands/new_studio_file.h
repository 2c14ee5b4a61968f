#pragma once

#include "core/store/database.h"
#include "core/store/unfinished_file.h"

#include <QString>

#include <memory>

namespace chalk::app {

/// A new studio's file while it is being made: whatever goes wrong there is no half studio.
class NewStudioFile {
public:
    /// Fails where there is something of that name already, which is never touched, or where the file cannot be made.
    [[nodiscard]] static store::Result<NewStudioFile> begin(const QString& file);

    [[nodiscard]] store::Database& database() { return *m_database; }
    /// Closes the studio and gives it its name.
    [[nodiscard]] store::Result<void> finish();

private:
    explicit NewStudioFile(const QString& file);

    QString m_file;
    std::unique_ptr<store::UnfinishedFile> m_part;
    std::unique_ptr<store::Database> m_database;  ///< of the part: closed before it gets its name
};

}  // namespace chalk::app
