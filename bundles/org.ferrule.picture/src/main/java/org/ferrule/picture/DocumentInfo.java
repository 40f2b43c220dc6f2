/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What is to be known about a document.
 *
 * @param title its title
 * @param author who made it; may be empty
 * @param subject what it is about; may be empty
 * @param keywords words to find it by
 * @param language its language as a BCP 47 tag, such as {@code "en"} or {@code "en-GB"}
 * @param created when it was made; given by the caller, so that the same input makes the same bytes
 */
public record DocumentInfo(String title, String author, String subject, List<String> keywords, String language,
        OffsetDateTime created) {

    public DocumentInfo {
        Check.printable("Title", title);
        Check.printable("Author", author);
        Check.printable("Subject", subject);
        keywords = List.copyOf(keywords);
        keywords.forEach(word -> Check.printable("Keyword", word));
        if (!language.matches("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*")) {
            throw new IllegalArgumentException("Not a language tag: \"" + language + "\"");
        }
    }

    /** An English document with a title and a time, and nothing else said. */
    public static DocumentInfo of(String title, OffsetDateTime created) {
        return new DocumentInfo(title, "", "", List.of(), "en", created);
    }

    /** The same with an author. */
    public DocumentInfo by(String person) {
        return new DocumentInfo(title, person, subject, keywords, language, created);
    }

    /** The same with a subject. */
    public DocumentInfo about(String matter) {
        return new DocumentInfo(title, author, matter, keywords, language, created);
    }

    /** The same with keywords. */
    public DocumentInfo withKeywords(String... words) {
        return new DocumentInfo(title, author, subject, List.of(words), language, created);
    }

    /** The same in another language. */
    public DocumentInfo in(String tag) {
        return new DocumentInfo(title, author, subject, keywords, tag, created);
    }
}
