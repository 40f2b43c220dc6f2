/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Source Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What sort of source figures come from.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getSourceKind()
 * @model
 * @generated
 */
public enum SourceKind implements Enumerator
{
	/**
	 * The '<em><b>Instructions For Use</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INSTRUCTIONS_FOR_USE_VALUE
	 * @generated
	 * @ordered
	 */
	INSTRUCTIONS_FOR_USE(0, "instructionsForUse", "instructions for use"),

	/**
	 * The '<em><b>Label</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LABEL_VALUE
	 * @generated
	 * @ordered
	 */
	LABEL(1, "label", "label"),

	/**
	 * The '<em><b>Catalogue</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CATALOGUE_VALUE
	 * @generated
	 * @ordered
	 */
	CATALOGUE(2, "catalogue", "catalogue"),

	/**
	 * The '<em><b>Bench Report</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BENCH_REPORT_VALUE
	 * @generated
	 * @ordered
	 */
	BENCH_REPORT(3, "benchReport", "bench report"),

	/**
	 * The '<em><b>Publication</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUBLICATION_VALUE
	 * @generated
	 * @ordered
	 */
	PUBLICATION(4, "publication", "publication"),

	/**
	 * The '<em><b>Standard</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDARD_VALUE
	 * @generated
	 * @ordered
	 */
	STANDARD(5, "standard", "standard"),

	/**
	 * The '<em><b>Common Practice</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMON_PRACTICE_VALUE
	 * @generated
	 * @ordered
	 */
	COMMON_PRACTICE(6, "commonPractice", "common practice"),

	/**
	 * The '<em><b>From Memory</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FROM_MEMORY_VALUE
	 * @generated
	 * @ordered
	 */
	FROM_MEMORY(7, "fromMemory", "from memory"),

	/**
	 * The '<em><b>Measured</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MEASURED_VALUE
	 * @generated
	 * @ordered
	 */
	MEASURED(8, "measured", "measured");

	/**
	 * The '<em><b>Instructions For Use</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INSTRUCTIONS_FOR_USE
	 * @model name="instructionsForUse" literal="instructions for use"
	 * @generated
	 * @ordered
	 */
	public static final int INSTRUCTIONS_FOR_USE_VALUE = 0;

	/**
	 * The '<em><b>Label</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LABEL
	 * @model name="label"
	 * @generated
	 * @ordered
	 */
	public static final int LABEL_VALUE = 1;

	/**
	 * The '<em><b>Catalogue</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CATALOGUE
	 * @model name="catalogue"
	 * @generated
	 * @ordered
	 */
	public static final int CATALOGUE_VALUE = 2;

	/**
	 * The '<em><b>Bench Report</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BENCH_REPORT
	 * @model name="benchReport" literal="bench report"
	 * @generated
	 * @ordered
	 */
	public static final int BENCH_REPORT_VALUE = 3;

	/**
	 * The '<em><b>Publication</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUBLICATION
	 * @model name="publication"
	 * @generated
	 * @ordered
	 */
	public static final int PUBLICATION_VALUE = 4;

	/**
	 * The '<em><b>Standard</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDARD
	 * @model name="standard"
	 * @generated
	 * @ordered
	 */
	public static final int STANDARD_VALUE = 5;

	/**
	 * The '<em><b>Common Practice</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMON_PRACTICE
	 * @model name="commonPractice" literal="common practice"
	 * @generated
	 * @ordered
	 */
	public static final int COMMON_PRACTICE_VALUE = 6;

	/**
	 * The '<em><b>From Memory</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FROM_MEMORY
	 * @model name="fromMemory" literal="from memory"
	 * @generated
	 * @ordered
	 */
	public static final int FROM_MEMORY_VALUE = 7;

	/**
	 * The '<em><b>Measured</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MEASURED
	 * @model name="measured"
	 * @generated
	 * @ordered
	 */
	public static final int MEASURED_VALUE = 8;

	/**
	 * An array of all the '<em><b>Source Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SourceKind[] VALUES_ARRAY =
		new SourceKind[]
		{
			INSTRUCTIONS_FOR_USE,
			LABEL,
			CATALOGUE,
			BENCH_REPORT,
			PUBLICATION,
			STANDARD,
			COMMON_PRACTICE,
			FROM_MEMORY,
			MEASURED,
		};

	/**
	 * A public read-only list of all the '<em><b>Source Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SourceKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Source Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SourceKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			SourceKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Source Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SourceKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			SourceKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Source Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SourceKind get(int value)
	{
		switch (value)
		{
			case INSTRUCTIONS_FOR_USE_VALUE: return INSTRUCTIONS_FOR_USE;
			case LABEL_VALUE: return LABEL;
			case CATALOGUE_VALUE: return CATALOGUE;
			case BENCH_REPORT_VALUE: return BENCH_REPORT;
			case PUBLICATION_VALUE: return PUBLICATION;
			case STANDARD_VALUE: return STANDARD;
			case COMMON_PRACTICE_VALUE: return COMMON_PRACTICE;
			case FROM_MEMORY_VALUE: return FROM_MEMORY;
			case MEASURED_VALUE: return MEASURED;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private SourceKind(int value, String name, String literal)
	{
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue()
	{
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral()
	{
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		return literal;
	}

} //SourceKind
