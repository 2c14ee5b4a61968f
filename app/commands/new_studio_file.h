#pragma once

#include "core/store/database.h"

#include <QString>

#include <memory>

namespace chalk::app {

/// A studio's file while it is being made. It is written beside its place and gets its name at the end, so that whatever goes wrong
/// there is no half studio: what is not finished is taken away.
class NewStudioFile {
public:
    /// Fails where there is something of that name already, which is never touched, or where the file cannot be made.
    [[nodiscard]] static store::Result<NewStudioFile> begin(const QString& file);
    ~NewStudioFile();
    NewStudioFile(NewStudioFile&&) = default;
    NewStudioFile& operator=(NewStudioFile&&) = delete;

    [[nodiscard]] store::Database& database() { return *m_database; }
    /// Closes the studio and gives it its name.
    [[nodiscard]] store::Result<void> finish();

private:
    NewStudioFile(QString file, QString part) : m_file(std::move(file)), m_part(std::move(part)) {}

    QString m_file;
    QString m_part;
    std::unique_ptr<store::Database> m_database;
};

}  // namespace chalk::app
