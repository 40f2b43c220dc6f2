/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Wire Traits</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What matters of a guidewire beyond its sections.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.WireTraits#getTipLoad <em>Tip Load</em>}</li>
 *   <li>{@link org.ferrule.model.WireTraits#getTipShape <em>Tip Shape</em>}</li>
 *   <li>{@link org.ferrule.model.WireTraits#isExtendable <em>Extendable</em>}</li>
 *   <li>{@link org.ferrule.model.WireTraits#getCoating <em>Coating</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getWireTraits()
 * @model
 * @generated
 */
public interface WireTraits extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Tip Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The tip load as printed, with its unit, such as 0.8 gf.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tip Load</em>' attribute.
	 * @see #setTipLoad(String)
	 * @see org.ferrule.model.ModelPackage#getWireTraits_TipLoad()
	 * @model
	 * @generated
	 */
	String getTipLoad();

	/**
	 * Sets the value of the '{@link org.ferrule.model.WireTraits#getTipLoad <em>Tip Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tip Load</em>' attribute.
	 * @see #getTipLoad()
	 * @generated
	 */
	void setTipLoad(String value);

	/**
	 * Returns the value of the '<em><b>Tip Shape</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The shape of the tip.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tip Shape</em>' attribute.
	 * @see #setTipShape(String)
	 * @see org.ferrule.model.ModelPackage#getWireTraits_TipShape()
	 * @model
	 * @generated
	 */
	String getTipShape();

	/**
	 * Sets the value of the '{@link org.ferrule.model.WireTraits#getTipShape <em>Tip Shape</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tip Shape</em>' attribute.
	 * @see #getTipShape()
	 * @generated
	 */
	void setTipShape(String value);

	/**
	 * Returns the value of the '<em><b>Extendable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether an extension wire can be attached; not known when nothing is said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Extendable</em>' attribute.
	 * @see #isSetExtendable()
	 * @see #unsetExtendable()
	 * @see #setExtendable(boolean)
	 * @see org.ferrule.model.ModelPackage#getWireTraits_Extendable()
	 * @model unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Can be extended'"
	 * @generated
	 */
	boolean isExtendable();

	/**
	 * Sets the value of the '{@link org.ferrule.model.WireTraits#isExtendable <em>Extendable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Extendable</em>' attribute.
	 * @see #isSetExtendable()
	 * @see #unsetExtendable()
	 * @see #isExtendable()
	 * @generated
	 */
	void setExtendable(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.WireTraits#isExtendable <em>Extendable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetExtendable()
	 * @see #isExtendable()
	 * @see #setExtendable(boolean)
	 * @generated
	 */
	void unsetExtendable();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.WireTraits#isExtendable <em>Extendable</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Extendable</em>' attribute is set.
	 * @see #unsetExtendable()
	 * @see #isExtendable()
	 * @see #setExtendable(boolean)
	 * @generated
	 */
	boolean isSetExtendable();

	/**
	 * Returns the value of the '<em><b>Coating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The coating.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coating</em>' attribute.
	 * @see #setCoating(String)
	 * @see org.ferrule.model.ModelPackage#getWireTraits_Coating()
	 * @model
	 * @generated
	 */
	String getCoating();

	/**
	 * Sets the value of the '{@link org.ferrule.model.WireTraits#getCoating <em>Coating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coating</em>' attribute.
	 * @see #getCoating()
	 * @generated
	 */
	void setCoating(String value);

} // WireTraits
