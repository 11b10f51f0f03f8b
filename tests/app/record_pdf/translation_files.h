#pragma once
// The words of the record as they stand in resources/translations.

#include "record_pdf/record_language.h"

#include <QFile>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include <map>

namespace hammerline::record_pdf {

using Words = std::map<QString, QString>; ///< context and source -> translation

/// The messages of a .ts file, each there once; "" where a translation is unfinished.
inline Words messagesOf(const QString &path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    Words words;
    QString context;
    QString source;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == QLatin1String("name"))
            context = xml.readElementText();
        else if (xml.name() == QLatin1String("source"))
            source = xml.readElementText();
        else if (xml.name() == QLatin1String("translation")) {
            const bool done = !xml.attributes().hasAttribute(QStringLiteral("type"));
            const QString said = xml.readElementText();
            const bool first = words.emplace(context + '|' + source, done ? said : QString()).second;
            EXPECT_TRUE(first) << "twice in " << path.toStdString() << ": " << source.toStdString();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return words;
}

inline Words wordsOf(Language language)
{
    return messagesOf(QStringLiteral(HAMMERLINE_SOURCE_DIR "/resources/translations/record_%1.ts")
                          .arg(QString::fromStdString(std::string(idOf(language)))));
}

} // namespace hammerline::record_pdf
