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
 * A representation of the literals of the enumeration '<em><b>Lumen Use</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a lumen is for.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getLumenUse()
 * @model
 * @generated
 */
public enum LumenUse implements Enumerator
{
	/**
	 * The '<em><b>Working</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WORKING_VALUE
	 * @generated
	 * @ordered
	 */
	WORKING(0, "working", "working"),

	/**
	 * The '<em><b>Wire</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WIRE_VALUE
	 * @generated
	 * @ordered
	 */
	WIRE(1, "wire", "wire"),

	/**
	 * The '<em><b>Inflation</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INFLATION_VALUE
	 * @generated
	 * @ordered
	 */
	INFLATION(2, "inflation", "inflation"),

	/**
	 * The '<em><b>Flush</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLUSH_VALUE
	 * @generated
	 * @ordered
	 */
	FLUSH(3, "flush", "flush"),

	/**
	 * The '<em><b>Imaging</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IMAGING_VALUE
	 * @generated
	 * @ordered
	 */
	IMAGING(4, "imaging", "imaging");

	/**
	 * The '<em><b>Working</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WORKING
	 * @model name="working"
	 * @generated
	 * @ordered
	 */
	public static final int WORKING_VALUE = 0;

	/**
	 * The '<em><b>Wire</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WIRE
	 * @model name="wire"
	 * @generated
	 * @ordered
	 */
	public static final int WIRE_VALUE = 1;

	/**
	 * The '<em><b>Inflation</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INFLATION
	 * @model name="inflation"
	 * @generated
	 * @ordered
	 */
	public static final int INFLATION_VALUE = 2;

	/**
	 * The '<em><b>Flush</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLUSH
	 * @model name="flush"
	 * @generated
	 * @ordered
	 */
	public static final int FLUSH_VALUE = 3;

	/**
	 * The '<em><b>Imaging</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IMAGING
	 * @model name="imaging"
	 * @generated
	 * @ordered
	 */
	public static final int IMAGING_VALUE = 4;

	/**
	 * An array of all the '<em><b>Lumen Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final LumenUse[] VALUES_ARRAY =
		new LumenUse[]
		{
			WORKING,
			WIRE,
			INFLATION,
			FLUSH,
			IMAGING,
		};

	/**
	 * A public read-only list of all the '<em><b>Lumen Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<LumenUse> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Lumen Use</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LumenUse get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			LumenUse result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Lumen Use</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LumenUse getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			LumenUse result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Lumen Use</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LumenUse get(int value)
	{
		switch (value)
		{
			case WORKING_VALUE: return WORKING;
			case WIRE_VALUE: return WIRE;
			case INFLATION_VALUE: return INFLATION;
			case FLUSH_VALUE: return FLUSH;
			case IMAGING_VALUE: return IMAGING;
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
	private LumenUse(int value, String name, String literal)
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

} //LumenUse
