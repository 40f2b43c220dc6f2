/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Transducer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An imaging transducer.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Transducer#getType <em>Type</em>}</li>
 *   <li>{@link org.ferrule.model.Transducer#getAt <em>At</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getTransducer()
 * @model
 * @generated
 */
public interface Transducer extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.TransducerType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it images with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see org.ferrule.model.TransducerType
	 * @see #isSetType()
	 * @see #unsetType()
	 * @see #setType(TransducerType)
	 * @see org.ferrule.model.ModelPackage#getTransducer_Type()
	 * @model unsettable="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Images with'"
	 * @generated
	 */
	TransducerType getType();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Transducer#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see org.ferrule.model.TransducerType
	 * @see #isSetType()
	 * @see #unsetType()
	 * @see #getType()
	 * @generated
	 */
	void setType(TransducerType value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Transducer#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetType()
	 * @see #getType()
	 * @see #setType(TransducerType)
	 * @generated
	 */
	void unsetType();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Transducer#getType <em>Type</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Type</em>' attribute is set.
	 * @see #unsetType()
	 * @see #getType()
	 * @see #setType(TransducerType)
	 * @generated
	 */
	boolean isSetType();

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of the imaging plane from the distal tip (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Dimension)
	 * @see org.ferrule.model.ModelPackage#getTransducer_At()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='Station of the imaging plane'"
	 * @generated
	 */
	Dimension getAt();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Transducer#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Dimension value);

} // Transducer
