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
 * A representation of the literals of the enumeration '<em><b>Figure Class</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The classes of figure that a span can be given for.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getFigureClass()
 * @model
 * @generated
 */
public enum FigureClass implements Enumerator
{
	/**
	 * The '<em><b>Inner Diameter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INNER_DIAMETER_VALUE
	 * @generated
	 * @ordered
	 */
	INNER_DIAMETER(0, "innerDiameter", "inner diameter"),

	/**
	 * The '<em><b>Outer Diameter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OUTER_DIAMETER_VALUE
	 * @generated
	 * @ordered
	 */
	OUTER_DIAMETER(1, "outerDiameter", "outer diameter"),

	/**
	 * The '<em><b>Crossing Profile</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROSSING_PROFILE_VALUE
	 * @generated
	 * @ordered
	 */
	CROSSING_PROFILE(2, "crossingProfile", "crossing profile"),

	/**
	 * The '<em><b>Wire Diameter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WIRE_DIAMETER_VALUE
	 * @generated
	 * @ordered
	 */
	WIRE_DIAMETER(3, "wireDiameter", "wire diameter");

	/**
	 * The '<em><b>Inner Diameter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INNER_DIAMETER
	 * @model name="innerDiameter" literal="inner diameter"
	 * @generated
	 * @ordered
	 */
	public static final int INNER_DIAMETER_VALUE = 0;

	/**
	 * The '<em><b>Outer Diameter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OUTER_DIAMETER
	 * @model name="outerDiameter" literal="outer diameter"
	 * @generated
	 * @ordered
	 */
	public static final int OUTER_DIAMETER_VALUE = 1;

	/**
	 * The '<em><b>Crossing Profile</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROSSING_PROFILE
	 * @model name="crossingProfile" literal="crossing profile"
	 * @generated
	 * @ordered
	 */
	public static final int CROSSING_PROFILE_VALUE = 2;

	/**
	 * The '<em><b>Wire Diameter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WIRE_DIAMETER
	 * @model name="wireDiameter" literal="wire diameter"
	 * @generated
	 * @ordered
	 */
	public static final int WIRE_DIAMETER_VALUE = 3;

	/**
	 * An array of all the '<em><b>Figure Class</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FigureClass[] VALUES_ARRAY =
		new FigureClass[]
		{
			INNER_DIAMETER,
			OUTER_DIAMETER,
			CROSSING_PROFILE,
			WIRE_DIAMETER,
		};

	/**
	 * A public read-only list of all the '<em><b>Figure Class</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FigureClass> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Figure Class</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FigureClass get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			FigureClass result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Figure Class</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FigureClass getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			FigureClass result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Figure Class</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FigureClass get(int value)
	{
		switch (value)
		{
			case INNER_DIAMETER_VALUE: return INNER_DIAMETER;
			case OUTER_DIAMETER_VALUE: return OUTER_DIAMETER;
			case CROSSING_PROFILE_VALUE: return CROSSING_PROFILE;
			case WIRE_DIAMETER_VALUE: return WIRE_DIAMETER;
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
	private FigureClass(int value, String name, String literal)
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

} //FigureClass
