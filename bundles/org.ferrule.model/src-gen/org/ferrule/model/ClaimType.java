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
 * A representation of the literals of the enumeration '<em><b>Claim Type</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a claim says.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getClaimType()
 * @model
 * @generated
 */
public enum ClaimType implements Enumerator
{
	/**
	 * The '<em><b>Minimum Lumen</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MINIMUM_LUMEN_VALUE
	 * @generated
	 * @ordered
	 */
	MINIMUM_LUMEN(0, "minimumLumen", "minimum lumen"),

	/**
	 * The '<em><b>Largest Device</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LARGEST_DEVICE_VALUE
	 * @generated
	 * @ordered
	 */
	LARGEST_DEVICE(1, "largestDevice", "largest device"),

	/**
	 * The '<em><b>Compatible</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMPATIBLE_VALUE
	 * @generated
	 * @ordered
	 */
	COMPATIBLE(2, "compatible", "compatible"),

	/**
	 * The '<em><b>Not Compatible</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_COMPATIBLE_VALUE
	 * @generated
	 * @ordered
	 */
	NOT_COMPATIBLE(3, "notCompatible", "not compatible");

	/**
	 * The '<em><b>Minimum Lumen</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MINIMUM_LUMEN
	 * @model name="minimumLumen" literal="minimum lumen"
	 * @generated
	 * @ordered
	 */
	public static final int MINIMUM_LUMEN_VALUE = 0;

	/**
	 * The '<em><b>Largest Device</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LARGEST_DEVICE
	 * @model name="largestDevice" literal="largest device"
	 * @generated
	 * @ordered
	 */
	public static final int LARGEST_DEVICE_VALUE = 1;

	/**
	 * The '<em><b>Compatible</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMPATIBLE
	 * @model name="compatible"
	 * @generated
	 * @ordered
	 */
	public static final int COMPATIBLE_VALUE = 2;

	/**
	 * The '<em><b>Not Compatible</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_COMPATIBLE
	 * @model name="notCompatible" literal="not compatible"
	 * @generated
	 * @ordered
	 */
	public static final int NOT_COMPATIBLE_VALUE = 3;

	/**
	 * An array of all the '<em><b>Claim Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ClaimType[] VALUES_ARRAY =
		new ClaimType[]
		{
			MINIMUM_LUMEN,
			LARGEST_DEVICE,
			COMPATIBLE,
			NOT_COMPATIBLE,
		};

	/**
	 * A public read-only list of all the '<em><b>Claim Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ClaimType> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Claim Type</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ClaimType get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			ClaimType result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Claim Type</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ClaimType getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			ClaimType result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Claim Type</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ClaimType get(int value)
	{
		switch (value)
		{
			case MINIMUM_LUMEN_VALUE: return MINIMUM_LUMEN;
			case LARGEST_DEVICE_VALUE: return LARGEST_DEVICE;
			case COMPATIBLE_VALUE: return COMPATIBLE;
			case NOT_COMPATIBLE_VALUE: return NOT_COMPATIBLE;
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
	private ClaimType(int value, String name, String literal)
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

} //ClaimType
