/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

/** What can be wrong with a document before its content is looked at. */
public enum FormatCode {
    /** The bytes are not UTF-8. */
    NOT_UTF_8,
    /** The text is not JSON. */
    SYNTAX,
    /** The document is not a JSON object. */
    NOT_AN_OBJECT,
    /** The format's name is missing. */
    MISSING_FORMAT,
    /** The format's name is not known. */
    UNKNOWN_FORMAT,
    /** The format does not agree with the ending of the file name. */
    FORMAT_AND_NAME,
    /** The file name ends for no format. */
    FILE_NAME,
    /** The format's version is missing. */
    MISSING_VERSION,
    /** The format's version is not one that ever was. */
    BAD_VERSION,
    /** The format's version is newer than this program. */
    NEWER_VERSION,
    /** A key stands twice in an object. */
    DUPLICATE_KEY,
    /** A key is not known; it is kept. */
    UNKNOWN_KEY,
    /** A value has the wrong JSON type. */
    WRONG_TYPE,
    /** A number is not what its key can hold. */
    BAD_NUMBER,
    /** A word is none of those that its key knows. */
    UNKNOWN_WORD
}
