/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lumen Section</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stretch of a lumen between two stations measured from the lumen's proximal entry.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.LumenSection#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.LumenSection#getFrom <em>From</em>}</li>
 *   <li>{@link org.ferrule.model.LumenSection#getTo <em>To</em>}</li>
 *   <li>{@link org.ferrule.model.LumenSection#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.LumenSection#getIdDistal <em>Id Distal</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getLumenSection()
 * @model
 * @generated
 */
public interface LumenSection extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the section; unique in its lumen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getLumenSection_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LumenSection#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of its proximal end from the lumen's entry; the entry itself when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLumenSection_From()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='From station'"
	 * @generated
	 */
	Dimension getFrom();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LumenSection#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Dimension value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of its distal end from the lumen's entry; the lumen's end when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLumenSection_To()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='To station'"
	 * @generated
	 */
	Dimension getTo();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LumenSection#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Dimension value);

	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The inner diameter at its proximal end (mm, in or Fr).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLumenSection_Id()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='INNER_DIAMETER' label='Inner diameter'"
	 * @generated
	 */
	Dimension getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LumenSection#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(Dimension value);

	/**
	 * Returns the value of the '<em><b>Id Distal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The inner diameter at its distal end, where it tapers; otherwise id (mm, in or Fr).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id Distal</em>' attribute.
	 * @see #setIdDistal(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLumenSection_IdDistal()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='INNER_DIAMETER' label='Inner diameter, distal end'"
	 * @generated
	 */
	Dimension getIdDistal();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LumenSection#getIdDistal <em>Id Distal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id Distal</em>' attribute.
	 * @see #getIdDistal()
	 * @generated
	 */
	void setIdDistal(Dimension value);

} // LumenSection
