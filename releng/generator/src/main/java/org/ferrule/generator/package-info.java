/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Generates the model code, its edit support and the JSON Schemas from the Ecore, from a plain main: neither a
 * workbench nor a workspace is needed. Generated files are committed; the tests of this module fail when they
 * are not current.
 */
package org.ferrule.generator;
